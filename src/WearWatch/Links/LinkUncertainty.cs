using WearWatch.Chains.Links;
using WearWatch.Gauging;

namespace WearWatch.Links;

/// <summary>
/// How far a measure of a link may be wrong: tool and seating in quadrature, by JCGM 100 (docs/references.md [1]).
/// </summary>
/// <remarks>
/// The limits are absolute lengths, so the tolerance of a new link is no part of it. A caliper's largest error is taken as
/// rectangular. How well its jaws seat on steel: common practice, 0.03 mm over a crown, 0.05 mm inside a link; over several
/// links as over rollers (<see cref="Instrument.Caliper"/>).
/// </remarks>
public static class LinkUncertainty
{
    private const double CaliperErrorMm = 0.03;
    private const double OnACrownMm = 0.03;
    private const double InALinkMm = 0.05;
    private const double TemperatureKelvin = 5;

    /// <summary>Standard uncertainty (k = 1) of a measure in millimetres.</summary>
    /// <param name="measure">Which measure.</param>
    /// <param name="valueMm">Its value in millimetres.</param>
    /// <param name="tool">With what a length over several links was measured.</param>
    public static double StandardMm(LinkMeasure measure, double valueMm, Tool tool) => measure switch
    {
        LinkMeasure.OneLink => Hypotenuse(Rectangular(CaliperErrorMm), InALinkMm),
        LinkMeasure.SeveralLinks => OverSeveral(valueMm, Instrument.Usual(tool)),
        // The caliper is wrong by the same in both diameters, and seats anew in each.
        LinkMeasure.MeanDiameter => Hypotenuse(Rectangular(CaliperErrorMm), OnACrownMm / Math.Sqrt(2)),
        _ => Hypotenuse(Rectangular(CaliperErrorMm), OnACrownMm),
    };

    private static double OverSeveral(double valueMm, Instrument tool) => Hypotenuse(
        Hypotenuse(Rectangular(tool.MaximumErrorMm(valueMm)), tool.ReadingUncertaintyMm),
        valueMm * Gauge.SteelExpansionPerKelvin * Rectangular(TemperatureKelvin));

    private static double Rectangular(double halfWidth) => halfWidth / Math.Sqrt(3);

    private static double Hypotenuse(double a, double b) => Math.Sqrt(a * a + b * b);
}
