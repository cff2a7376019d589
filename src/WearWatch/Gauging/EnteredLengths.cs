using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Gauging;

/// <summary>One to five lengths of the same place as a person tells them; their mean counts.</summary>
/// <remarks>
/// <c>1219.4</c>, <c>1219.4; 1219.6; 1219.5</c>, or over the rollers <c>1210.2 inside 1226.1 outside</c>; each part is read by
/// <see cref="MeasuredLengthText"/>.
/// </remarks>
public abstract record EnteredLengths
{
    /// <summary>Measured more often than this, a place tells nothing new. Common practice.</summary>
    public const int Most = 5;

    private EnteredLengths()
    {
    }

    /// <summary>Lengths that were understood.</summary>
    /// <param name="LengthsMm">The lengths in millimetres, from centre to centre.</param>
    /// <param name="WrittenIn">The unit of the first, by its own mark where it has one.</param>
    public sealed record Understood(IReadOnlyList<double> LengthsMm, LengthUnit WrittenIn) : EnteredLengths
    {
        /// <summary>Their mean in millimetres.</summary>
        public double MeanMm => LengthsMm.Average();
    }

    /// <summary>Text of which at least one part is no length.</summary>
    /// <param name="Reason">What is wrong with it and what would do.</param>
    public sealed record NotUnderstood(Phrase Reason) : EnteredLengths;

    /// <summary>Reads the text.</summary>
    /// <param name="text">What was told.</param>
    /// <param name="expected">The unit of plain numbers.</param>
    public static EnteredLengths Read(string? text, LengthUnit expected)
    {
        var parts = (text ?? "").Split(';');
        if (parts.Length > Most) return new NotUnderstood($"More than {Most} lengths of one place; tell at most {Most}.");
        var lengths = new List<LengthText.Understood>(parts.Length);
        foreach (var part in parts)
        {
            var length = MeasuredLengthText.Read(part, expected);
            if (length is LengthText.NotUnderstood not) return new NotUnderstood(not.Reason);
            lengths.Add((LengthText.Understood)length);
        }

        return new Understood(lengths.ConvertAll(length => length.Length.Millimetres), lengths[0].WrittenIn);
    }
}
