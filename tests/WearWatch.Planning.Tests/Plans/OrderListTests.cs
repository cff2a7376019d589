using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;

namespace WearWatch.Planning.Tests.Plans;

public sealed class OrderListTests
{
    private static SwapTask Of100Pitches(string chain, double days) =>
        A.Swap(chain, forecast: A.Certain(24 * days), needs: [new PartNeed(A.Chain16B, 100)]);

    private static PartOrder OrderFor(Spare? spare, params double[] days)
    {
        var input = A.Input([.. days.Select((d, i) => Of100Pitches($"C{i}", d + 0.5))],
            [.. days.Select(d => A.Window(d))]) with
        { Spares = spare is null ? [] : [spare] };
        var plan = new SwapCosting(input)
            .Count(input.Tasks.Select((t, i) => (t.Chain, input.Windows[i].Id)).ToDictionary(x => x.Chain, x => (string?)x.Id));
        return OrderList.For(input, plan).Single(o => o.Spare.Part == A.Chain16B);
    }

    [Fact]
    public void What_is_there_and_on_order_is_taken_off_and_the_rest_is_ordered_in_whole_packs()
    {
        var order = OrderFor(new Spare
        {
            Part = A.Chain16B,
            InStock = 120,
            OnOrder = [new Delivery(A.Monday.AddDays(30), 50)],
            PackSize = 160,
            LeadTime = TimeSpan.FromDays(21),
        }, 14, 28, 42);
        Assert.Equal(160, order.Quantity); // after the second swap 80 are missing, after the third 130
        Assert.Equal((A.Monday.AddDays(28), A.Monday.AddDays(7)), (order.NeededBy, order.LatestOrder));
        Assert.True(order.OnRecord);
        Assert.True(order.TooLateAt(A.Monday.AddDays(8)));
        Assert.False(order.TooLateAt(A.Monday));
    }

    [Fact]
    public void Enough_on_the_shelf_needs_no_order()
    {
        var order = OrderFor(new Spare { Part = A.Chain16B, InStock = 300 }, 14, 28);
        Assert.Equal((0, null, null), (order.Quantity, order.NeededBy, order.LatestOrder));
    }

    [Fact]
    public void A_part_without_a_record_counts_as_not_there_and_is_named_so()
    {
        var order = OrderFor(null, 42);
        Assert.Equal((false, 100), (order.OnRecord, order.Quantity));
    }

    [Fact]
    public void Demand_falls_into_the_month_in_which_the_limit_is_reached()
    {
        // Made on 2 March. One limit is sure in March, one in April; with 80 pitches there, 20 and then 120 are missing.
        var order = OrderFor(new Spare { Part = A.Chain16B, InStock = 80 }, 14, 42);
        Assert.Equal([100.0, 100, 0], order.Months.Select(m => m.Expected), (a, b) => Math.Abs(a - b) < 2.1);
        Assert.Equal([100, 100, 0], order.Months.Select(m => m.Planned));
        Assert.Equal([20.0, 120, 120], order.Months.Select(m => m.ExpectedShortage), (a, b) => Math.Abs(a - b) < 2.1);
        Assert.Equal((100, 100), (order.Months[0].Low, order.Months[0].High));
    }

    // The stop of the 14th day is the last before the take-up ends on the 20th; the other strand goes with it.
    [Fact]
    public void A_shortening_takes_its_link_at_the_last_stop_before_its_day_and_none_once_the_chain_is_replaced()
    {
        var link = new Part(PartKind.ConnectingLink, "16B-1");
        var frame = A.Input([Of100Pitches("C0", 200)], [A.Window(14), A.Window(28)]);
        var stops = frame.Windows.OrderBy(w => w.Start).ToArray();
        var input = frame with
        {
            Shortenings = [.. Enumerable.Range(0, 2).Select(i => PlannedShortening.Of(
                $"C{i}", stops[0].Line, A.Monday.AddDays(20), [new PartNeed(link, 1)], frame))],
        };
        Assert.All(input.Shortenings, s => Assert.Equal((stops[0].Start, stops[0].Id), (s.At, s.WindowId)));
        var order = OrderList.For(input, Placed(null)).Single(o => o.Spare.Part == link);
        Assert.Equal((2, stops[0].Start), (order.Quantity, order.NeededBy!.Value));
        Assert.Equal(1, OrderList.For(input, Placed(stops[0].Id)).Single(o => o.Spare.Part == link).Quantity);
        Assert.Equal(2, OrderList.For(input, Placed(stops[1].Id)).Single(o => o.Spare.Part == link).Quantity);
        Assert.Equal([2.0, 0, 0], order.Months.Take(3).Select(m => m.Expected), (a, b) => Math.Abs(a - b) < 1e-9);

        SwapPlan Placed(string? window) => new SwapCosting(input).Count(new Dictionary<string, string?> { ["C0"] = window });
    }
}
