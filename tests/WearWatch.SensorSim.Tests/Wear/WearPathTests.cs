using WearWatch.SensorSim.Wear;

namespace WearWatch.SensorSim.Tests.Wear;

public sealed class WearPathTests
{
    // Oracle: pocket calculator. 0.1 new + 0.2 run in + 0.2 %/1000 h: 3 % at (3 - 0.3) / 0.2 = 13.5 thousand hours.
    [Fact]
    public void A_chain_without_noise_crosses_its_limit_where_a_straight_line_does()
    {
        var path = A.Path(A.Constants(newPercent: 0.1, runInPercent: 0.2), A.Rate(0.2));

        Assert.Equal(13_500, path.HoursAt(3), 1e-6);
        Assert.Equal(3, path.ElongationAt(13_500), 1e-9);
    }

    // Oracle: e(35) = 0.1 + 0.2 (1 - 1/e) + 0.2 * 0.035 with A = 0.2 and T = 35 h.
    [Fact]
    public void Run_in_has_gone_through_63_percent_after_its_time_constant() =>
        Assert.Equal(
            0.1 + 0.2 * (1 - Math.Exp(-1)) + 0.007,
            A.Path(A.Constants(newPercent: 0.1, runInPercent: 0.2, runInHours: 35)).ElongationAt(35), 1e-12);

    [Fact]
    public void A_new_chain_has_its_new_elongation_and_reaches_less_at_once()
    {
        var path = A.Path(A.Constants(newPercent: 0.12, runInPercent: 0.2));

        Assert.Equal(0.12, path.ElongationAt(0), 1e-12);
        Assert.Equal(0, path.HoursAt(0.1));
    }

    // Oracle: the differential equation dy/dh = r exp(g (y - e_c)) by the classical Runge-Kutta method in steps of 5 h, an
    // implementation that shares nothing with the closed form. Its error at this step is far below 1e-9.
    [Theory]
    [InlineData(2.0, 1.9)]
    [InlineData(2.4, 0.8)]
    [InlineData(2.9, 1.4)]
    public void Above_the_hard_case_wear_follows_its_differential_equation(double from, double perPercent)
    {
        const double percentPerHour = 0.25e-3;
        var path = A.Path(A.Constants(accelerationFromPercent: from, accelerationPerPercent: perPercent), A.Rate(0.25));
        double Slope(double y) => percentPerHour * Math.Exp(perPercent * Math.Max(0, y - from));

        const double step = 5;
        var (hours, elongation) = (1000 * from / 0.25, from);
        while (elongation < 3.3)
        {
            var k1 = Slope(elongation);
            var k2 = Slope(elongation + step / 2 * k1);
            var k3 = Slope(elongation + step / 2 * k2);
            var k4 = Slope(elongation + step * k3);
            elongation += step / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            hours += step;

            Assert.Equal(elongation, path.ElongationAt(hours), 1e-8);
        }

        Assert.Equal(hours, path.HoursAt(elongation), 1e-3);
    }

    // Oracle: central difference of the elongation itself over 0.2 h.
    [Theory]
    [InlineData(20)]
    [InlineData(3_333)]
    [InlineData(11_111)]
    public void The_rate_is_the_slope_of_the_elongation(double hours)
    {
        var path = A.Path(A.Constants(0.05, 0.2, 35, 2.0, 1.5), A.Rate(0.2));
        var slope = 1000 * (path.ElongationAt(hours + 0.1) - path.ElongationAt(hours - 0.1)) / 0.2;

        Assert.Equal(slope, path.RateAt(hours), 1e-4);
    }

    // Oracle: 5,000 h at 0.2 %/1000 h give 1 %; the second percent at 0.6 %/1000 h takes 1,666.67 h.
    [Fact]
    public void A_threefold_rate_shortens_the_rest_to_a_third() => Assert.Equal(
        5_000 + 5_000 / 3.0, A.Path(rate: A.Rate(0.2, change: new RateStep(5_000, 3))).HoursAt(2), 1e-6);

    [Fact]
    public void A_worn_out_path_stays_at_the_longest_elongation() => Assert.Equal(
        WearPath.LongestPercent, A.Path(A.Constants(accelerationFromPercent: 2, accelerationPerPercent: 2)).ElongationAt(1e6));
}
