using System.Reflection;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using WearWatch.Dashboard.Kit.Pages;
using WearWatch.Dashboard.Tests.Architecture;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Tests.Pages;

/// <summary>What all pages of the plant do of themselves: follow their address, hear news, and keep answers in order.</summary>
public sealed class PlantPageTests : BunitContext
{
    private readonly FakeTimeProvider clock = new();
    private readonly PlantNews news = new();

    public PlantPageTests() => Services.AddSingleton(news).AddSingleton<TimeProvider>(clock);

    private NavigationManager Address => Services.GetRequiredService<NavigationManager>();

    [Fact]
    public void A_page_loads_what_its_address_asks_at_first_and_at_each_change_of_its_query()
    {
        var page = Open("/probe?show=a").Instance;
        Address.NavigateTo("/probe?show=b");
        page.Move("?show=c");
        Assert.Equal(["a", "b", "c"], page.Loaded);
        Assert.EndsWith("/probe?show=c", Address.Uri, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_of_two_addresses_follows_from_one_to_the_other_but_not_to_another_page()
    {
        var page = Open("/probe?show=a").Instance;
        Address.NavigateTo("/probe/too?show=b");
        Address.NavigateTo("/elsewhere?show=c");
        Assert.Equal(["a", "b"], page.Loaded);
    }

    [Fact]
    public void Another_order_of_a_table_asks_for_nothing_and_stays_when_the_filter_changes()
    {
        var page = Open("/probe?show=a").Instance;
        Address.NavigateTo("/probe?show=a&sort-table=-line");
        Assert.Equal(["a"], page.Loaded);
        page.Move("?show=b");
        Assert.Equal(["a", "b"], page.Loaded);
        Assert.EndsWith("/probe?show=b&sort-table=-line", Address.Uri, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_a_new_address_and_its_figures_the_page_says_that_it_is_loading()
    {
        PageProgress progress = new();
        List<bool> told = [];
        RenderTree.Add<CascadingValue<PageProgress>>(p => p.Add(c => c.Value, progress));
        var shown = Open("/probe?show=a");
        progress.Changed += () => told.Add(progress.IsLoading);
        var slow = shown.Instance.Gate = new TaskCompletionSource();
        Address.NavigateTo("/probe?show=b");
        Assert.Equal([true], told);
        Assert.Equal("a", shown.Find("p").TextContent);
        slow.SetResult();
        shown.WaitForAssertion(() => Assert.Equal([true, false], told));
        shown.WaitForAssertion(() => Assert.Equal("b", shown.Find("p").TextContent));
    }

    [Fact]
    public void An_older_answer_never_comes_after_a_younger_one()
    {
        var shown = Open("/probe?show=a");
        var slow = shown.Instance.Gate = new TaskCompletionSource();
        Address.NavigateTo("/probe?show=b");
        Address.NavigateTo("/probe?show=c");
        Address.NavigateTo("/probe?show=d");
        shown.Instance.Gate = null;
        slow.SetResult();
        shown.WaitForAssertion(() => Assert.Equal("d", shown.Find("p").TextContent));
        Assert.Equal(["a", "b", "d"], shown.Instance.Loaded);
    }

    [Fact]
    public void Of_a_flood_of_news_a_page_hears_once_in_a_while_and_only_of_chains_that_it_shows()
    {
        var shown = Open("/probe?show=a");
        news.Tell([8]);
        clock.Advance(PlantPage.Pause);
        Assert.Equal(["a"], shown.Instance.Loaded);
        for (var i = 0; i < 100; i++) news.Tell([7, 8]);
        clock.Advance(PlantPage.Pause);
        shown.WaitForAssertion(() => Assert.Equal(["a", "a"], shown.Instance.Loaded));
        news.Tell([7]);
        clock.Advance(PlantPage.Pause);
        shown.WaitForAssertion(() => Assert.Equal(["a", "a", "a"], shown.Instance.Loaded));
    }

    [Fact]
    public void A_page_that_was_left_ends_what_it_asked_for_and_hears_nothing_more()
    {
        var page = Open("/probe?show=a").Instance;
        var ends = page.Ends;
        page.Dispose();
        Assert.True(ends.IsCancellationRequested);
        news.Tell([7]);
        clock.Advance(PlantPage.Pause);
        Address.NavigateTo("/probe?show=b");
        Assert.Equal(["a"], page.Loaded);
    }

    /// <summary>A parameter bound to the query would be set after the page has loaded for the new one.</summary>
    [Fact]
    public void No_page_of_the_plant_binds_a_parameter_to_the_query()
    {
        var pages = TypeGraph.Whole.Types.Where(t => t.IsSubclassOf(typeof(PlantPage))).ToArray();
        Assert.NotEmpty(pages);
        Assert.DoesNotContain(
            pages.SelectMany(p => p.GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)),
            p => p.IsDefined(typeof(SupplyParameterFromQueryAttribute), inherit: true));
    }

    private IRenderedComponent<Probe> Open(string address)
    {
        Address.NavigateTo(address);
        return Render<Probe>();
    }

    [Route("/probe")]
    [Route("/probe/too")]
    private sealed class Probe : PlantPage
    {
        private string shown = "";

        public List<string> Loaded { get; } = [];

        public TaskCompletionSource? Gate { get; set; }

        public CancellationToken Ends => Gone;

        public void Move(string query) => Go(query);

        protected override bool Shows(int chainId) => chainId == 7;

        protected override async Task LoadAsync()
        {
            var asked = Asked("show");
            if (Gate is { } gate) await gate.Task;
            Loaded.Add(shown = asked);
        }

        protected override void BuildRenderTree(Microsoft.AspNetCore.Components.Rendering.RenderTreeBuilder builder)
        {
            builder.OpenElement(0, "p");
            builder.AddContent(1, shown);
            builder.CloseElement();
        }
    }
}
