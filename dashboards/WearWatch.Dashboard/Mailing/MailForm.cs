using System.Globalization;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Mailing;

/// <summary>What a person wishes of mail, as it was typed.</summary>
public sealed class MailForm
{
    private const string Clock = "HH:mm";

    public string? Address { get; set; }

    public int Rhythm { get; set; }

    public string? DailyAt { get; set; }

    public string? QuietFrom { get; set; }

    public string? QuietTo { get; set; }

    /// <summary>The lines that were ticked; nothing for none.</summary>
    public string[]? Lines { get; set; }

    /// <summary>The kinds of notices that were ticked, by their numbers; nothing for none.</summary>
    public int[]? Kinds { get; set; }

    /// <summary>What is kept, as a person would type it.</summary>
    public static MailForm Of(MailWishRow wish) => new()
    {
        Address = wish.Address,
        Rhythm = (int)wish.Rhythm,
        DailyAt = Text(wish.DailyAt),
        QuietFrom = Text(wish.QuietFrom),
        QuietTo = Text(wish.QuietTo),
        Lines = [.. wish.Lines],
        Kinds = [.. wish.Kinds.Select(k => (int)k)],
    };

    /// <summary>Reads what was typed: the wish, or what is wrong.</summary>
    public Phrase? Read(int personId, out MailWishRow wish)
    {
        wish = new MailWishRow
        {
            PersonId = personId,
            Address = (Address ?? "").Trim(),
            Rhythm = Enum.IsDefined((MailRhythm)Rhythm) ? (MailRhythm)Rhythm : MailRhythm.Never,
            Lines = Lines ?? [],
            Kinds = [.. (Kinds ?? []).Select(k => (NoticeKind)k).Where(Enum.IsDefined)],
            QuietFrom = Time(QuietFrom),
            QuietTo = Time(QuietTo),
        };
        if (Time(DailyAt) is not { } daily) return $"The time of the day's mail, such as 06:00.";
        wish.DailyAt = daily;
        return IsWrong(QuietFrom) || IsWrong(QuietTo) ? Phrase.Of($"Quiet hours such as 22:00 to 06:00, or none.") : null;
    }

    private static bool IsWrong(string? text) => !string.IsNullOrWhiteSpace(text) && Time(text) is null;

    private static TimeOnly? Time(string? text) =>
        TimeOnly.TryParseExact(text, Clock, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time : null;

    private static string Text(TimeOnly? time) => time?.ToString(Clock, CultureInfo.InvariantCulture) ?? "";
}
