namespace WearWatch.Plant.Costs;

/// <summary>How often some chain was oiled in a year, and with how much, as far as that was told.</summary>
/// <param name="Oilings">Oilings recorded.</param>
/// <param name="Millilitres">Oil told to be used, and what lubricators gave.</param>
public readonly record struct OilGiven(int Oilings, double Millilitres)
{
    /// <summary>As a sheet of costs.</summary>
    public CostStatement ToSheet() => new() { Oilings = Oilings, OilMl = Millilitres };
}
