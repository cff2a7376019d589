using WearWatch.Dashboard.Planner;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Planning;

public sealed class PlanFormsTests
{
    private static ShutdownForm Shutdown(
        string line = "", string recurs = "FREQ=WEEKLY", string own = "", double hours = 8, int people = 2) =>
        new() { Line = line, Day = new DateOnly(2026, 11, 28), Recurs = recurs, OwnRule = own, Hours = hours, People = people };

    [Fact]
    public void A_shutdown_of_every_line_is_one_for_each_with_people_times_hours()
    {
        var (rules, fault) = Shutdown().Read(["A", "B"]);
        Assert.Null(fault);
        Assert.Equal(["A", "B"], rules.Select(r => r.Line));
        Assert.All(rules, r => Assert.Equal((16.0, new DateTime(2026, 11, 28, 6, 0, 0)), (r.CrewHours, r.FirstStart)));
    }

    [Theory]
    [InlineData("own", "every Saturday", 8, 2, "'every Saturday' is no recurrence rule. An example: FREQ=MONTHLY;BYDAY=1SA")]
    [InlineData("", "", 0, 2, "A shutdown lasts more than 0 and at most 1,440 hours.")]
    [InlineData("", "", 2000, 2, "A shutdown lasts more than 0 and at most 1,440 hours.")]
    [InlineData("", "", 8, -1, "People: 0 to 500.")]
    public void A_shutdown_that_cannot_be_is_told_what_is_wrong(
        string recurs, string own, double hours, int people, string told) =>
        Assert.Equal(told, Shutdown("A", recurs, own, hours, people).Read(["A"]).Fault);

    [Fact]
    public void A_shutdown_of_every_line_needs_a_line() =>
        Assert.Equal("There is no line yet: enter or import chains first.", Shutdown().Read([]).Fault);

    [Fact]
    public void A_part_with_its_deliveries_is_read_and_shown_the_same()
    {
        var (spare, onOrder, fault) = new SpareForm
        {
            Designation = " 16B-1 ",
            InStock = 160,
            PackSize = 160,
            Price = 3,
            OnOrder = "2026-12-01 160\n2027-01-15 320",
        }.Read();
        Assert.Null(fault);
        Assert.Equal("16B-1 chain", spare!.Part.ToString());
        Assert.Equal(
            [new SpareDelivery(new DateOnly(2026, 12, 1), 160), new SpareDelivery(new DateOnly(2027, 1, 15), 320)], onOrder);
    }

    [Theory]
    [InlineData("", "", 1, "Which part? Such as 16B-1.")]
    [InlineData("16B-1", "", 0, "Stock, lead time and price are not negative, and a pack size is at least one.")]
    [InlineData("16B-1", "soon 160", 1, "'soon 160' is no delivery: write a date and a quantity, such as 2026-12-01 160.")]
    [InlineData("16B-1", "2026-12-01", 1, "'2026-12-01' is no delivery: write a date and a quantity, such as 2026-12-01 160.")]
    public void A_part_that_cannot_be_read_is_told_why(string designation, string onOrder, int packSize, string told) =>
        Assert.Equal(told, new SpareForm { Designation = designation, OnOrder = onOrder, PackSize = packSize }.Read().Fault);

    [Fact]
    public void Terms_of_a_swap_left_empty_go_by_family_and_length()
    {
        var (terms, fault) = new SwapTermsForm { Chain = " D-1 ", Group = " drive ", WithSprockets = true }.Read(["D-1"]);
        Assert.Null(fault);
        Assert.Equal(new SwapTermsLine("D-1", "", "drive", null, null, true), terms);
        Assert.Equal(terms, SwapTermsForm.Of(terms!).Read(["D-1"]).Terms);
    }

    [Theory]
    [InlineData("D-9", 2.0, 1, "No chain is called 'D-9'.")]
    [InlineData("D-1", 0.0, 1, "A swap takes more than 0 and at most 1,000 hours; leave it empty to go by family and length.")]
    [InlineData("D-1", 2.0, 0, "A swap takes 1 to 20 people; leave it empty to go by family.")]
    public void Terms_of_a_swap_that_cannot_be_are_told_why(string chain, double hours, int people, string told) =>
        Assert.Equal(told, new SwapTermsForm { Chain = chain, Hours = hours, People = people }.Read(["D-1"]).Fault);

    [Fact]
    public void Costs_with_a_lines_own_figure_are_read()
    {
        var (costs, lines, fault) = CostsText.Read(CostRows.Usual(), "Press = 1200.5\n", ["Press", "Drying"]);
        Assert.Null(fault);
        Assert.Equal(400, costs!.StoppedLinePerHour);
        Assert.Equal(1200.5, CostRows.ToCosts(costs, lines).StoppedPerHour("Press"));
    }

    [Theory]
    [InlineData("Nowhere = 3", "'Nowhere = 3': there is no line of that name. Write the line, =, and an amount.")]
    [InlineData("Press = much", "'Press = much': the amount is a number of 0 or more.")]
    [InlineData("Press = 1\nPress = 2", "'Press' stands twice.")]
    public void Costs_of_a_line_that_cannot_be_are_told_why(string lines, string told) =>
        Assert.Equal(told, CostsText.Read(CostRows.Usual(), lines, ["Press"]).Fault);

    public static TheoryData<Action<PlanningCostsRow>, string> CostsThatCannotBe => new()
    {
        { c => c.MeanHoursToFailurePastLimit = 0, "The mean hours to failure lie above 0 and at most at 1,000,000 h." },
        { c => c.BreakdownHours = -1, "A cost or a number of hours is not negative." },
        { c => c.ExpressShare = double.NaN, "A cost or a number of hours is not negative." },
        { c => c.HorizonWeeks = 0, "Plan 1 to 104 weeks ahead." },
        { c => c.SprocketPrice = -1, "A price is not negative." },
    };

    [Theory]
    [MemberData(nameof(CostsThatCannotBe), DisableDiscoveryEnumeration = true)]
    public void Costs_that_cannot_be_are_told_why(Action<PlanningCostsRow> change, string told)
    {
        var costs = CostRows.Usual();
        change(costs);
        Assert.Equal(told, CostsText.Read(costs, "", []).Fault);
    }
}
