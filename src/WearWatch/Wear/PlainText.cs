using System.Globalization;

namespace WearWatch.Wear;

/// <summary>Numbers in sentences: the same in every culture, percentages as <c>31 %</c>.</summary>
internal static class PlainText
{
    private static readonly CultureInfo Notation =
        CultureInfo.ReadOnly(new CultureInfo("") { NumberFormat = { PercentPositivePattern = 0 } });

    public static string Of(FormattableString text) => text.ToString(Notation);
}
