using WearWatch.Phrases;

namespace WearWatch.Gauging;

/// <summary>What a length is measured with, and how far it may be wrong.</summary>
public abstract record Instrument
{
    private Instrument()
    {
    }

    /// <summary>Which kind of tool it is.</summary>
    public abstract Tool Tool { get; }

    /// <summary>Largest error that it may have at a length, in millimetres, either way.</summary>
    /// <param name="lengthMm">The measured length in millimetres.</param>
    public abstract double MaximumErrorMm(double lengthMm);

    /// <summary>Standard uncertainty of reading and placing it once, in millimetres.</summary>
    public abstract double ReadingUncertaintyMm { get; }

    /// <summary>Who says what its largest error is.</summary>
    public abstract Phrase Source { get; }

    /// <summary>
    /// The usual instrument of a kind of tool: a tape of class II read from a graduation, a caliper of 0.05 mm, a sensor.
    /// </summary>
    public static Instrument Usual(Tool tool) => tool switch
    {
        Tool.Tape => new Tape(),
        Tool.Caliper => new Caliper(),
        _ => new Sensor(),
    };

    /// <summary>A measuring tape.</summary>
    /// <param name="Class">Its accuracy class.</param>
    /// <param name="FromHook">Whether one end is a hook or a butt end; better begin at a graduation.</param>
    /// <param name="GraduationMm">Distance of its graduations in millimetres.</param>
    public sealed record Tape(TapeClass Class = TapeClass.II, bool FromHook = false, double GraduationMm = 1) : Instrument
    {
        /// <inheritdoc/>
        public override Tool Tool => Tool.Tape;

        /// <inheritdoc/>
        public override Phrase Source => $"docs/references.md [2]";

        /// <summary>Largest error: <c>a + b L</c> millimetres, plus c from a hook.</summary>
        /// <remarks>L is in metres and rounded up to the next whole one. a, b, c: I 0.1, 0.1, 0.1; II 0.3, 0.2, 0.2; III 0.6,
        /// 0.4, 0.3. Source: docs/references.md [2].</remarks>
        /// <param name="lengthMm">The measured length in millimetres.</param>
        public override double MaximumErrorMm(double lengthMm)
        {
            var (a, b, c) = Class switch
            {
                TapeClass.I => (0.1, 0.1, 0.1),
                TapeClass.II => (0.3, 0.2, 0.2),
                _ => (0.6, 0.4, 0.3),
            };
            return a + b * Math.Ceiling(lengthMm / 1000) + (FromHook ? c : 0);
        }

        /// <summary>Two ends, each read to half a graduation: <c>sqrt(2) (g/2)/sqrt(3)</c>.</summary>
        public override double ReadingUncertaintyMm => GraduationMm / Math.Sqrt(6);
    }

    /// <summary>A caliper, inside and outside of the end rollers.</summary>
    /// <param name="LargestErrorMm">
    /// Its largest error as its maker states it. From memory: 0.03 mm up to 300 mm, 0.05 mm up to 600 mm.
    /// </param>
    /// <param name="StepMm">Its digital step or scale division in millimetres.</param>
    public sealed record Caliper(double LargestErrorMm = 0.05, double StepMm = 0.01) : Instrument
    {
        /// <summary>
        /// How well two jaws seat on rollers that have play: with the error of the caliper 0.12 mm. Common practice.
        /// </summary>
        private const double SeatingUncertaintyMm = 0.1164;

        /// <inheritdoc/>
        public override Tool Tool => Tool.Caliper;

        /// <inheritdoc/>
        public override Phrase Source => $"stated by its maker as ISO 13385-1 wants [3]";

        /// <inheritdoc/>
        public override double MaximumErrorMm(double lengthMm) => Math.Max(LargestErrorMm, StepMm);

        /// <summary>Seating and half a step either way.</summary>
        public override double ReadingUncertaintyMm =>
            Math.Sqrt(SeatingUncertaintyMm * SeatingUncertaintyMm + StepMm * StepMm / 12);
    }

    /// <summary>Sensors on the running chain.</summary>
    /// <param name="LargestErrorMm">Largest error of the length in millimetres. Common practice.</param>
    /// <param name="RepeatMm">Standard deviation from one pass to the next in millimetres. Common practice.</param>
    public sealed record Sensor(double LargestErrorMm = 0.05, double RepeatMm = 0.1164) : Instrument
    {
        /// <inheritdoc/>
        public override Tool Tool => Tool.Sensor;

        /// <inheritdoc/>
        public override Phrase Source => $"stated for the sensors";

        /// <inheritdoc/>
        public override double MaximumErrorMm(double lengthMm) => LargestErrorMm;

        /// <inheritdoc/>
        public override double ReadingUncertaintyMm => RepeatMm;
    }
}
