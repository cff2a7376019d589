using WearWatch.Dashboard.Engineer.Workbench.Studies;
using WearWatch.Plant.Studies;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Workbench;

public sealed class StudyBookTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_kept_study_is_listed_with_who_and_when_and_opens_as_it_was_told()
    {
        await using var host = new DashboardHost();
        host.CreateClient();
        var book = host.Get<StudyBook>();

        Assert.Null(await book.KeepAsync(MeasuringStudyKind.Crossed, " Tapes, May ", "Ines", StudyExample.Crossed, 3, Ct));
        Assert.Null(await book.KeepAsync(MeasuringStudyKind.Known, "Blocks", "Ines", StudyExample.Known, null, Ct));
        Assert.Contains("name", (await book.KeepAsync(MeasuringStudyKind.Known, "  ", "Ines", StudyExample.Known, null,
            Ct))!.ToString(),
            StringComparison.Ordinal);

        var kept = Assert.Single(await book.AskAsync(MeasuringStudyKind.Crossed, Ct));
        Assert.Equal(("Tapes, May", "Ines", 3.0, StudyExample.Crossed), (kept.Name, kept.KeptBy, kept.Limit, kept.Readings));
        Assert.Null(StudyText.Read(kept.Readings).Wrong);
        Assert.NotEqual(default, kept.KeptAt);
    }
}
