using WearWatch.Plant.Register;

namespace WearWatch.Dashboard.Administration.Register;

/// <summary>What the page says about a card that could not be kept as it was typed.</summary>
public static class CardSaid
{
    /// <summary>Another person was faster.</summary>
    public static Phrase Overtaken(RegisterAnswer.Overtaken answer)
    {
        var who = answer.Since is [var first, ..] ? Phrase.Verbatim(first.By) : $"Somebody";
        var what = answer.Since.Count > 0 ? Phrase.Join(", ", answer.Since.Select(CardChangeLine.Words)) : $"the master data";
        return $"Not saved: in the meantime {who} changed {what}. That stands in the form now, and what you typed stays. Look "
            + $"at it and save again.";
    }
}
