namespace WearWatch.Benchmarks.Entries;

/// <summary>What came of many entries with one slip of the length.</summary>
/// <param name="Slip">The slip.</param>
/// <param name="Made">How many were made.</param>
/// <param name="Far">How many of them lie four standard deviations off.</param>
/// <param name="Held">How many of those are asked about.</param>
/// <param name="HeldOfAll">How many of all are asked about.</param>
/// <param name="First">How many of those asked about have the slip first, with what was meant.</param>
/// <param name="Shown">How many of those asked about show it, first or beside another one that is as near.</param>
/// <param name="Wrong">How many of those asked about have one correction first, and a wrong one.</param>
internal sealed record LengthCount(string Slip, int Made, int Far, int Held, int HeldOfAll, int First, int Shown, int Wrong)
{
    public double HeldShare => (double)Held / Math.Max(1, Far);

    public double FirstShare => (double)First / Math.Max(1, HeldOfAll);

    public double WrongShare => (double)Wrong / Math.Max(1, HeldOfAll);

    public override string ToString() => FormattableString.Invariant(
        $"{Slip,-20} made {Made,5}  asked {(double)HeldOfAll / Math.Max(1, Made),6:0.000}  far {Far,5}  ")
        + FormattableString.Invariant($"asked {HeldShare,6:0.000}  ")
        + FormattableString.Invariant(
            $"first {FirstShare,6:0.000}  shown {(double)Shown / Math.Max(1, HeldOfAll),6:0.000}  wrong {WrongShare,6:0.000}");
}
