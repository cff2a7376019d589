using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>A planner orders what the plan lacks, enters what the supplier says, and puts what comes into the stock.</summary>
public sealed class OrderTests(Screen screen)
{
    [Fact]
    public async Task An_order_is_placed_confirmed_received_and_another_cancelled()
    {
        await using var host = await PlanTests.MillAsync();
        await using var desk = await screen.AtDeskAsync(address: host.ClientOptions.BaseAddress.ToString().TrimEnd('/'));
        var page = desk.Page;
        await desk.GoAsync("/plan/orders");
        await page.GetByLabel("Order this part").SelectOptionAsync("16B-1 chain");
        await page.GetByLabel("Quantity to order").FillAsync("160");
        await page.GetByLabel("Supplier").FillAsync("North chain works");
        await page.GetByLabel("Unit price").FillAsync("2.5");
        await page.GetByLabel("Unit price").PressAsync("Tab");
        await Assertions.Expect(page.GetByText("Sum: 400 EUR")).ToBeVisibleAsync();
        var lasting = await page.GetByLabel("Expected on").InputValueAsync();
        await page.GetByLabel("by express").CheckAsync();
        await Assertions.Expect(page.GetByLabel("Expected on")).Not.ToHaveValueAsync(lasting);
        await page.GetByRole(AriaRole.Button, new() { Name = "Place order" }).ClickAsync();
        await Assertions.Expect(page.GetByText("chain 16B-1: ordered, expected on ")).ToBeVisibleAsync();
        var order = page.GetByRole(AriaRole.Row, new() { Name = "North chain works" });
        await Assertions.Expect(order).ToContainTextAsync("ordered, by express");

        await order.GetByRole(AriaRole.Button, new() { Name = "Confirm chain 16B-1" }).ClickAsync();
        var day = DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime).AddDays(40)
            .ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        await order.GetByLabel("Confirmed for").FillAsync(day);
        await order.GetByLabel("What the supplier said").FillAsync("on the truck of Monday");
        await order.GetByRole(AriaRole.Button, new() { Name = "Save date" }).ClickAsync();
        await Assertions.Expect(order).ToContainTextAsync("confirmed, by express");
        await Assertions.Expect(order).ToContainTextAsync($"> {day} on the truck of Monday");
        await desk.PictureAsync("order-book");
        Assert.Empty(await desk.BarriersAsync());
        await order.GetByRole(AriaRole.Button, new() { Name = "Receive chain 16B-1" }).ClickAsync();
        await order.GetByLabel("Quantity received").FillAsync("150");
        await order.GetByRole(AriaRole.Button, new() { Name = "Put into stock" }).ClickAsync();
        await Assertions.Expect(page.GetByText("chain 16B-1: received. In stock: 150 more.")).ToBeVisibleAsync();
        await Assertions.Expect(order.GetByRole(AriaRole.Button)).ToHaveCountAsync(0);

        await page.GetByLabel("Order this part").SelectOptionAsync("16B-1 connecting link");
        await page.GetByRole(AriaRole.Button, new() { Name = "Place order" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel order: connecting link 16B-1" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel order", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToHaveTextAsync("Say why it is cancelled.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel order: connecting link 16B-1" }).ClickAsync();
        await page.GetByLabel("Why it is cancelled").FillAsync("found in the store");
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel order", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("connecting link 16B-1: cancelled.")).ToBeVisibleAsync();
        await desk.GoAsync("/plan/inputs?part=spares");
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { Name = "chain 16B-1" })).ToContainTextAsync("150");
        Assert.Empty(desk.Complaints);
    }
}
