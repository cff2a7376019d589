using System.Globalization;
using WearWatch.Dashboard.Kit.Language;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>Runs something as a person of a language would see it.</summary>
internal static class InLanguage
{
    public static void Of(string code, Action act) => Of(code, () =>
    {
        act();
        return true;
    });

    public static T Of<T>(string code, Func<T> ask)
    {
        var (culture, words) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = Tongue.Of(code)!.Culture;
        try
        {
            return ask();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, words);
        }
    }
}
