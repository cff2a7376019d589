using QRCoder;
using WearWatch.Plant.Rounds;

namespace WearWatch.Dashboard.Technician.Labels;

/// <summary>What hangs at a position: its name, what to measure, and a code that opens its page on a phone.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="Address">Where the code leads: the plant's own host, its mark, the position.</param>
public sealed record PositionLabel(FloorChain Chain, string Address)
{
    /// <summary>Quarter of the code may be dirty or worn off: a plant is no office.</summary>
    private const QRCodeGenerator.ECCLevel Correction = QRCodeGenerator.ECCLevel.Q;

    /// <summary>The label of a chain.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="host">Scheme and host under which phones reach the dashboard.</param>
    /// <param name="mark">The plant's mark.</param>
    public static PositionLabel Of(FloorChain chain, string host, string mark) =>
        new(chain, FormattableString.Invariant($"{host}/floor/at/{mark}/{chain.Row.Id}"));

    /// <summary>The code as a drawing without a size of its own.</summary>
    public string Svg()
    {
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(Address, Correction);
        using var code = new SvgQRCode(data);
        return code.GetGraphic(4, "#000000", "#ffffff", true, SvgQRCode.SizingMode.ViewBoxAttribute);
    }
}
