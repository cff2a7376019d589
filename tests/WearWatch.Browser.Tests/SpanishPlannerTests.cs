using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>A Spanish planner enters a stop, plans it, saves the plan and prints a chain's work package.</summary>
public sealed class SpanishPlannerTests(Screen screen)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_Spanish_planner_plans_a_stop_prints_its_work_package()
    {
        await using var host = await PlanTests.MillAsync();
        var address = host.ClientOptions.BaseAddress.ToString().TrimEnd('/');
        await using var desk = await screen.AtDeskAsync(address: address, locale: "es-ES");
        var page = desk.Page;
        await desk.GoAsync("/plan");
        await Assertions.Expect(page.GetByText("Ninguna parada planificada")).ToBeVisibleAsync();
        Assert.Empty(await desk.EnglishAsync());

        await page.GetByRole(AriaRole.Link, new() { Name = "Introducir paradas" }).ClickAsync();
        await page.GetByLabel("Se repite").SelectOptionAsync("FREQ=WEEKLY;INTERVAL=2");
        await page.GetByLabel("Duración, h").FillAsync("7,5");
        await page.GetByLabel("Cuadrilla", new() { Exact = true }).FillAsync("turno A");
        await page.GetByRole(AriaRole.Button, new() { Name = "Añadir" }).ClickAsync();
        await Assertions.Expect(page.GetByText("2 paradas añadidas.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Cell, new() { Name = "7,5" }).First).ToBeVisibleAsync();
        Assert.Empty(await desk.EnglishAsync());
        await desk.PictureAsync("spanish-plan-inputs");

        await desk.GoAsync("/plan");
        await page.GetByRole(AriaRole.Button, new() { Name = "Proponer un plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("No se guarda nada hasta guardar el plan.")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#plan-gap")).ToContainTextAsync("Demostrado: ningún plan cuesta menos de");
        await Assertions.Expect(page.Locator("#plan-gap")).ToContainTextAsync(new Regex(@"\d,\d %"));
        await page.Locator("[data-chain=D-1]").ClickAsync();
        await Assertions.Expect(page.GetByText("Paradas posibles").Or(page.GetByRole(AriaRole.Region,
            new() { Name = "Paradas posibles" }))).ToBeVisibleAsync();
        Assert.Empty(await desk.EnglishAsync());
        Assert.Equal("", await desk.OverTheEdgeAsync());
        await desk.PictureAsync("spanish-plan-board");
        await page.GetByRole(AriaRole.Button, new() { Name = "Guardar el plan" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Guardado: ")).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "ficha de trabajo" }).ClickAsync();
        var card = page.Locator(".job-card");
        await Assertions.Expect(card.Locator("h1")).ToHaveTextAsync("Ficha de trabajo: sustituir la cadena D-1");
        await Assertions.Expect(card).ToContainTextAsync("paso 25,4 mm");
        await Assertions.Expect(card).ToContainTextAsync("2,40 %");
        await Assertions.Expect(card).ToContainTextAsync("cuadrilla turno A");
        await Assertions.Expect(card).ToContainTextAsync("1 eslabón acodado");
        await Assertions.Expect(card).ToContainTextAsync("Montar los resguardos, quitar el candado propio");
        Assert.Empty(await desk.EnglishAsync());
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await desk.PictureAsync("spanish-job-card");
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        var print = await page.Context.APIRequest.GetAsync(address + "/plan/card/D-1/job-card.pdf");
        Assert.StartsWith("%PDF-", System.Text.Encoding.ASCII.GetString(await print.BodyAsync()), StringComparison.Ordinal);

        await desk.GoAsync("/plan/orders");
        await Assertions.Expect(page.GetByRole(AriaRole.Rowheader, new() { Name = "cadena 16B-1" }).First).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Columnheader, new() { Name = "Pedir antes del" })).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Cell, new() { NameRegex = new(@"^\d+,\d$") }).First).ToBeVisibleAsync();
        Assert.Empty(await desk.EnglishAsync());
        await desk.PictureAsync("spanish-orders");
        Assert.Empty(desk.Complaints);
    }
}
