using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;

namespace WearWatch.Tests.Lifting;

public sealed class AppointmentTests
{
    private static readonly DateOnly Today = new(2026, 11, 20);

    [Fact]
    public void An_appointment_covers_its_person_line_kind_and_days_and_nothing_else()
    {
        var card = new ChainCard { Name = "LC-1", Line = "Store", Family = ChainFamily.Named("leaf"), PitchMm = 19.05 };
        var appointment = new Appointment(1, "Ola", "Store", "leaf", new DateOnly(2026, 1, 1), new DateOnly(2026, 12, 31));
        Assert.True(appointment.Covers("ola", card, Today));
        Assert.False(appointment.Covers("Ina", card, Today));
        Assert.False(appointment.Covers("Ola", card with { Line = "Yard" }, Today));
        Assert.False(appointment.Covers("Ola", card with { Family = ChainFamily.Named("round_link") }, Today));
        Assert.False(appointment.Covers("Ola", card, new DateOnly(2027, 1, 1)));
        Assert.False((appointment with { EndedOn = Today }).Covers("Ola", card, Today));
    }
}
