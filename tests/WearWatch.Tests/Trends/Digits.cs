namespace WearWatch.Tests.Trends;

/// <summary>Agreement in decimal digits, as NIST counts it: the logarithm of the relative error.</summary>
internal static class Digits
{
    /// <summary>Asserts that a value agrees with a certified one to so many digits.</summary>
    public static void Agree(double digits, double certified, double actual)
    {
        var error = certified == 0 ? Math.Abs(actual) : Math.Abs(actual - certified) / Math.Abs(certified);
        var reached = error == 0 ? 16 : -Math.Log10(error);
        Assert.True(reached >= digits,
            FormattableString.Invariant($"{actual:R} agrees with {certified:R} to {reached:0.0} digits, not {digits}."));
    }
}
