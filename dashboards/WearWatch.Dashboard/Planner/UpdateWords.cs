using WearWatch.Plant.Planning;

namespace WearWatch.Dashboard.Planner;

/// <summary>What others decided while a board was open, in sentences.</summary>
public static class UpdateWords
{
    public static Phrase Of(PlanUpdate update)
    {
        Phrase others = update.Others.Count > 0
            ? Phrase.Of($"Somebody else saved decisions on {string.Join(", ", update.Others)}. They stand on this board now.")
            : $"The plan is newer than this board.";
        Phrase mine = update.Conflicts.Count > 0
            ? Phrase.Of($"Your moves of {string.Join(", ", update.Conflicts)} gave way; the others stay, not saved yet.")
            : $"Your moves stay, not saved yet.";
        return update.Draft.IsChanged || update.Conflicts.Count > 0 ? Phrase.Join(" ", [others, mine]) : others;
    }
}
