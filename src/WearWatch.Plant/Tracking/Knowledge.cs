using System.Security.Cryptography;
using System.Text;
using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Lubrication;
using WearWatch.Storage;
using WearWatch.Wear;

namespace WearWatch.Plant.Tracking;

/// <summary>What the plant has taught so far, and every assessment rests on.</summary>
/// <param name="Model">How fast chains of a kind wear; null while there is no model.</param>
/// <param name="Constants">How wear goes on, speeds up and is mismeasured.</param>
/// <param name="ConstantsText">The constants as they are kept; null for the defaults.</param>
/// <param name="Spread">By how much forecasts are stretched.</param>
public sealed record Knowledge(FleetModel? Model, WearConstants Constants, string? ConstantsText, ForecastSpread Spread)
{
    /// <summary>What the plant says of its oiling.</summary>
    public OilTerms Oil { get; init; } = OilTerms.Default;

    /// <summary>Whose general limits hold for the links of chains that lift.</summary>
    public LawRegion Region { get; init; }

    /// <summary>Names the knowledge: forecasts are kept with it, and made anew when it changes.</summary>
    public string Version { get; } = (Model?.Version ?? WearPrior.Broad.Source.ToString())
        + (ConstantsText is null
            ? ""
            : $" own {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(ConstantsText)))[..8]}")
        + (Spread == ForecastSpread.AsMade ? "" : FormattableString.Invariant($" spread {Spread.Early:0.00}/{Spread.Late:0.00}"));

    /// <summary>What is believed of a chain before its first reading.</summary>
    /// <param name="seen">Its card with what its position has shown (<see cref="RawChain.CardSeen"/>).</param>
    public WearPrior PriorFor(ChainCard seen) => Model?.PriorFor(seen) ?? WearPrior.Broad;
}
