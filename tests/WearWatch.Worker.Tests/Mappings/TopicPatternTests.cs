using WearWatch.Plant.Mappings;

namespace WearWatch.Worker.Tests.Mappings;

public sealed class TopicPatternTests
{
    [Theory]
    [InlineData("site/{line}/+/{machine}/hours", "site/+/+/+/hours", "site/A/press/C1/hours", "line=A machine=C1")]
    [InlineData("site/#", "site/#", "site/a/b", "")]
    [InlineData("site/#", "site/#", "site", "")]
    [InlineData("{m}/#", "+/#", "x/y/z", "m=x")]
    [InlineData("+/a", "+/a", "/a", "")]
    public void A_topic_of_the_pattern_gives_the_words_of_its_captures(string text, string filter, string topic, string words)
    {
        var pattern = TopicPattern.Read(text, out _)!;
        Assert.Equal(filter, pattern.Filter);
        Assert.Equal(words, string.Join(' ', pattern.Match(topic)!.OrderBy(w => w.Key).Select(w => $"{w.Key}={w.Value}")));
    }

    [Theory]
    [InlineData("site/{line}/hours", "site/A/B/hours")]
    [InlineData("site/+", "site")]
    [InlineData("Site/A", "site/A")]
    [InlineData("#", "$SYS/broker/uptime")]
    public void Another_topic_gives_none(string text, string topic) => Assert.Null(TopicPattern.Read(text, out _)!.Match(topic));

    [Theory]
    [InlineData("")]
    [InlineData("site/#/hours")]
    [InlineData("site/a+")]
    [InlineData("site/{line")]
    [InlineData("site/x{line}")]
    [InlineData("{a}/{a}")]
    public void What_is_no_pattern_is_refused_in_words(string text)
    {
        Assert.Null(TopicPattern.Read(text, out var fault));
        Assert.False(fault.IsEmpty);
    }
}
