using WearWatch.Dashboard.Overview.Glance;
using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Plant.Rounds;

namespace WearWatch.Dashboard.Overview.Starts;

/// <summary>What a technician sees first: the rounds of today, what wants oil, and what asks for a look.</summary>
public sealed class TechnicianStartQuery(RoundDesk rounds, GlanceQuery glance)
{
    public async Task<StartView> AskAsync(CancellationToken ct)
    {
        var (today, plant) = (await rounds.AskAsync(ct), await glance.AskAsync(ct));
        var (all, done) = (today.Rounds.Sum(r => r.All), today.Rounds.Sum(r => r.Done));
        var overdue = plant.Oil.Count(o => o.Overdue);
        return new StartView(
            [
                new(
                    $"{all - done}",
                    Phrase.Counted(all - done, $"task left on the round of today", $"tasks left on the round of today"),
                    "/rounds")
                {
                    Under = $"{done} of {all} done",
                },
                .. today.Rounds.Where(r => r.Done < r.All).Select(r => new StartFact(
                    $"{r.All - r.Done}", r.Name, "/rounds")
                {
                    Under = r.Person is { } who ? Phrase.Of($"taken by {who}") : $"nobody has it yet",
                }),
                new($"{overdue}", Phrase.Counted(overdue, $"chain wants oil now", $"chains want oil now"), "/lubrication")
                {
                    Urgent = overdue > 0,
                },
                new(
                    $"{plant.NoticeCounts.Asking}",
                    Phrase.Counted(
                        plant.NoticeCounts.Asking, $"notice that asks for a person", $"notices that ask for a person"),
                    "/notices?standing=asks")
                {
                    Under = plant.NoticeCounts.Quiet > 0 ? NoticeWords.Quiet(plant.NoticeCounts.Quiet) : Phrase.None,
                },
            ], plant.Time);
    }
}
