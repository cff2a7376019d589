using CsCheck;
using WearWatch.Gauging;

namespace WearWatch.Tests.Gauging;

public sealed class JointWearTests
{
    [Fact]
    public void Depth_and_elongation_are_each_others_inverse() =>
        Gen.Select(Gen.Double[0, 3], Gen.Double[0, 3], Gen.Double[5, 200]).Sample((pin, bush, pitchMm) =>
            Math.Abs(JointWear.DepthMm(JointWear.ElongationPercent(pin, bush, pitchMm), pitchMm) - pin - bush) < 1e-9);

    // Geometry: 25.4 mm pitch at 3 % is 0.76 mm of wear in a joint, to hold against the maker's hard case.
    [Fact]
    public void Three_percent_of_an_inch_are_three_quarters_of_a_millimetre() =>
        Assert.Equal(0.762, JointWear.DepthMm(3, 25.4), 1e-12);

    // Built link by link: pins sit fast in outer plates, bushes in inner ones; the pull closes the play of every joint.
    [Fact]
    public void A_chain_built_link_by_link_grows_by_the_wear_of_one_joint_a_pitch() =>
        Gen.Select(Gen.Int[1, 40], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((pairs, pin, bush) =>
        {
            double lengthMm = 0;
            for (var link = 0; link < 2 * pairs; link++) lengthMm += link % 2 == 0 ? 25.4 : 25.4 + 2 * (pin + bush);
            var percent = 100 * (lengthMm / (2 * pairs * 25.4) - 1);
            return Math.Abs(percent - JointWear.ElongationPercent(pin, bush, 25.4)) < 1e-9;
        });
}
