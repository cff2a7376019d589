namespace WearWatch.Storage.Tests;

public sealed class PlantNewsTests
{
    [Fact]
    public void Listeners_hear_which_chains_changed_and_nothing_of_nothing()
    {
        var news = new PlantNews();
        var heard = new List<int>();
        news.ChainsChanged += ids => heard.AddRange(ids);
        news.Tell([]);
        news.Tell([3, 5]);
        Assert.Equal([3, 5], heard);
    }
}
