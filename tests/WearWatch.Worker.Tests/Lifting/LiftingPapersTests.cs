using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Lifting;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Lifting;

public sealed class LiftingPapersTests : LiftingPlant
{
    [Fact]
    public async Task A_report_that_left_points_out_cannot_say_that_nothing_was_found()
    {
        await AppointAsync();
        Assert.Equal(["result"], Fields(await ExamineAsync(Nothing with { Points = [.. Nothing.Points.Skip(1)] })));
        Taken(await ExamineAsync(
            Nothing with { Points = [.. Nothing.Points.Skip(1)], Result = ExaminationResult.Incomplete }));
        Assert.Null((await StateAsync()).ExaminationDue);
    }

    [Fact]
    public async Task A_report_with_a_finding_that_stops_takes_it_out_of_use_and_cannot_say_otherwise()
    {
        await AppointAsync();
        PointResult[] cracked =
        [
            .. Nothing.Points.Select(p => p.Point == InspectionPoint.CrackedOrTurnedParts
                ? p with { Outcome = PointOutcome.Found, Note = "crack from the hole" }
                : p),
        ];
        Assert.Equal(["remedy_by", "result"], Fields(
            await ExamineAsync(Nothing with { Points = cracked, Result = ExaminationResult.RemedyByDate })).Order());
        Taken(await ExamineAsync(Nothing with { Points = cracked, Result = ExaminationResult.OutOfUse }));
        Assert.Equal(
            [
                LiftingFaultKind.StopFinding, LiftingFaultKind.ReportOutOfUse, LiftingFaultKind.NoCertificate,
                LiftingFaultKind.WearNotKnown,
            ],
            (await StateAsync()).On(Today).Select(f => f.Kind));
    }

    [Fact]
    public async Task An_examiner_needs_an_appointment_for_the_day_of_the_examination()
    {
        Assert.Equal(["examiner"], Fields(await ExamineAsync(Nothing)));
        await AppointAsync();
        Assert.Equal(["examiner"], Fields(await ExamineAsync(Nothing with { On = Today.AddYears(-2) })));
        Taken(await ExamineAsync(Nothing));
    }

    [Fact]
    public async Task A_withdrawn_report_counts_no_more_and_stays_on_record()
    {
        await AppointAsync();
        var id = Taken(await ExamineAsync(Nothing));
        Taken(await Plant.Get<ExaminationDesk>().WithdrawAsync(id, "Vera", "another chain's report", Ct));
        Assert.Null((await StateAsync()).ExaminedOn);
        await using var db = Plant.Db();
        Assert.Equal(2, await db.Examinations.CountAsync(Ct));
    }

    [Fact]
    public async Task An_examination_is_told_ahead_and_turns_urgent_when_its_day_has_passed()
    {
        await AppointAsync();
        Taken(await EnterAsync(Card()));
        Taken(await ExamineAsync(Nothing));
        Plant.Clock.Advance(TimeSpan.FromDays(336));
        await Plant.Review.ReviewAsync(null, null, Ct);
        Assert.Equal([(NoticeKind.ExaminationDue, false)], await OpenAsync());
        Plant.Clock.Advance(TimeSpan.FromDays(30));
        await Plant.Review.ReviewAsync(null, null, Ct);
        Assert.Equal([(NoticeKind.ExaminationDue, true)], await OpenAsync());
    }

    [Fact]
    public async Task Months_beyond_the_law_are_refused_until_a_written_scheme_is_on_file()
    {
        Assert.Equal(["examination_months"], Fields(await EnterAsync(Card(months: 18))));
        var file = new NewLiftingFile(
            "f1", Name, LiftingFileKind.WrittenScheme, "a/scheme.pdf", "%PDF-1.7 %%EOF"u8.ToArray(), "Vera");
        var scan = Taken(await Plant.Get<LiftingCardDesk>().TakeAsync(file, Ct));
        Taken(await EnterAsync(Card(months: 18, scheme: scan)));
    }

    [Fact]
    public async Task An_entry_that_somebody_else_changed_in_the_meantime_is_not_written_over()
    {
        var first = Taken(await EnterAsync(Card()));
        Assert.Equal(["basis"], Fields(await EnterAsync(Card(why: "typed again"))));
        Assert.Equal(["why"], Fields(await EnterAsync(Card(), first)));
        Taken(await EnterAsync(Card(why: "new certificate"), first));
        await using var db = Plant.Db();
        Assert.Equal(2, await db.LiftingCards.CountAsync(Ct));
    }

    [Theory]
    [InlineData("MZ not a scan", false)]
    [InlineData("%PDF-1.4 cut off", false)]
    [InlineData("%PDF-1.4 whole %%EOF\n", true)]
    public async Task Only_a_whole_PDF_or_JPEG_is_kept(string content, bool kept)
    {
        var answer = await Plant.Get<LiftingCardDesk>().TakeAsync(new NewLiftingFile(
            "k", Name, LiftingFileKind.Certificate, "scan", System.Text.Encoding.ASCII.GetBytes(content), "Vera"), Ct);
        Assert.Equal(kept, answer is IntakeAnswer.Taken);
    }
}
