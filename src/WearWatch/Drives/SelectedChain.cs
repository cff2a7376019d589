using System.Globalization;
using WearWatch.Chains;
using WearWatch.Lubrication;
using WearWatch.Units;

namespace WearWatch.Drives;

/// <summary>A chain that carries a power by the classic rating.</summary>
/// <param name="Type">The chain type.</param>
/// <param name="Rated">What it may transmit.</param>
/// <param name="Speed">Its speed.</param>
/// <param name="Pull">Its pull at the power asked for.</param>
/// <param name="OilFeed">How it has to be oiled at that speed.</param>
public sealed record SelectedChain(ChainType Type, Power Rated, Speed Speed, Force Pull, OilFeed OilFeed)
{
    /// <summary>The chains that carry a power, the smallest pitch and of it the fewest strands first.</summary>
    /// <param name="power">The power to transmit.</param>
    /// <param name="teeth">Teeth of the small sprocket; at least 9.</param>
    /// <param name="rpm">Its speed in turns a minute.</param>
    /// <param name="serviceFactor">From <see cref="RatingFactors.Service"/>.</param>
    /// <returns>Of each size the fewest strands that do; empty when none does.</returns>
    public static IReadOnlyList<SelectedChain> For(Power power, int teeth, double rpm, double serviceFactor = 1)
    {
        var asked = power.Watts * serviceFactor;
        return [.. ChainCatalogue.All
            .Where(type =>
                type is { Standard: "ASME B29.1", Strands: 1 } && int.TryParse(SizeOf(type), CultureInfo.InvariantCulture, out _))
            .OrderBy(type => type.PitchMm!.Value.Value)
            .Select(type => Smallest(type, asked, power, teeth, rpm))
            .OfType<SelectedChain>()];
    }

    private static SelectedChain? Smallest(ChainType single, double asked, Power power, int teeth, double rpm)
    {
        var size = SizeOf(single);
        for (var strands = 1; strands <= RatingFactors.MostStrands; strands++)
        {
            var rated = ClassicRating.Of(int.Parse(size, CultureInfo.InvariantCulture), teeth, rpm, strands);
            if (rated.Watts < asked) continue;
            if (ChainCatalogue.Find(strands == 1 ? size : $"{size}-{strands}") is not { } type) return null;
            var speed = new Speed(teeth * type.PitchMm!.Value.Value * rpm / 60_000);
            var pull = new Force(power.Watts / speed.MetresPerSecond);
            return new SelectedChain(type, rated, speed, pull, OilFeed.For(type, speed));
        }

        return null;
    }

    private static string SizeOf(ChainType type) => type.Designation.Split('-')[0];
}
