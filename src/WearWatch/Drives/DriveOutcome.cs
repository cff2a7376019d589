using WearWatch.Phrases;

namespace WearWatch.Drives;

/// <summary>What comes of working out a drive.</summary>
public abstract record DriveOutcome
{
    private DriveOutcome()
    {
    }

    /// <summary>A drive that can be.</summary>
    /// <param name="Figures">Its figures.</param>
    public sealed record Worked(DriveFigures Figures) : DriveOutcome;

    /// <summary>A drive that cannot be.</summary>
    /// <param name="Field">Which input to look at.</param>
    /// <param name="Reason">Why not, with its numbers.</param>
    public sealed record Refused(string Field, Phrase Reason) : DriveOutcome;
}
