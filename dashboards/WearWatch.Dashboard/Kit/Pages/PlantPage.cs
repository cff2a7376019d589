using System.Reflection;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Dashboard.Kit.Tables;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Kit.Pages;

/// <summary>
/// A page that shows what its address asks for. It loads at first, whenever its address changes, and when a chain changes that
/// it shows. Between a new address and its figures the page is marked as loading.
/// </summary>
/// <remarks>
/// Blazor does not tell a page that only its query has changed, so the page listens to the address itself. For the same reason
/// it reads <see cref="Query"/> and binds no parameter to it: two ways of hearing of a change come to differ.
/// </remarks>
public abstract class PlantPage : PagePart
{
    /// <summary>The shortest time between two loadings because of news.</summary>
    /// <remarks>An import tells of thousands of changes; a person can read only the last.</remarks>
    public static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(500);

    private Task loading = Task.CompletedTask;
    private bool isStale;
    private string shown = "";
    private int waiting;

    /// <summary>The address that is shown.</summary>
    protected Uri Shown => new(shown);

    /// <summary>Its query, with the question mark; empty for none.</summary>
    protected string Query => Shown.Query;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private PlantNews News { get; set; } = default!;

    [Inject]
    private TimeProvider Time { get; set; } = default!;

    /// <summary>What the address says under this name; empty when nothing.</summary>
    protected string Asked(string name) => QueryHelpers.ParseQuery(Query).GetValueOrDefault(name).ToString();

    /// <summary>Told while the figures are those of an earlier choice.</summary>
    [CascadingParameter]
    private PageProgress? Progress { get; set; }

    /// <summary>Asks for what the address and the page's parameters name.</summary>
    protected abstract Task LoadAsync();

    /// <summary>
    /// Whether news of this chain changes what the page shows; a page that says nothing stays as it was loaded.
    /// </summary>
    protected virtual bool Shows(int chainId) => false;

    /// <summary>Loads again; done when what is shown is at least as young as this call.</summary>
    /// <remarks>One loading at a time, so that an older answer never comes after a younger one.</remarks>
    protected Task ReloadAsync()
    {
        isStale = true;
        return loading.IsCompleted ? loading = LoadWhileStaleAsync() : loading;
    }

    /// <summary>
    /// Moves to another query of this page, as a step of the browser's history or in place of the last one; tables stay sorted.
    /// </summary>
    protected void Go(string query, bool inPlace = false) =>
        Navigation.NavigateTo(
            Shown.AbsolutePath + TableAddress.Keep(Query, query), new NavigationOptions { ReplaceHistoryEntry = inPlace });

    protected sealed override void OnInitialized()
    {
        shown = Navigation.Uri;
        Navigation.LocationChanged += OnMoved;
        News.ChainsChanged += OnNews;
    }

    protected sealed override Task OnInitializedAsync() => ReloadAsync();

    protected sealed override void OnParametersSet()
    {
    }

    // Of a change of the path Blazor tells, by the parameters that stand in it.
    protected sealed override Task OnParametersSetAsync() =>
        shown == Navigation.Uri ? Task.CompletedTask : ShowAsync(Navigation.Uri);

    protected override void Leave()
    {
        Navigation.LocationChanged -= OnMoved;
        News.ChainsChanged -= OnNews;
    }

    /// <remarks>How a table stands is its own matter: it is drawn anew, and nothing is asked for.</remarks>
    private async Task ShowAsync(string address)
    {
        var from = Shown;
        shown = address;
        if (Shown.AbsolutePath == from.AbsolutePath && TableAddress.IsAllThatDiffers(from.Query, Query))
        {
            StateHasChanged();
            return;
        }

        using (Progress?.Begin())
        {
            await ReloadAsync();
            StateHasChanged(); // the new figures are there before the mark goes
        }
    }

    private async Task LoadWhileStaleAsync()
    {
        while (isStale)
        {
            isStale = false;
            await LoadAsync();
        }
    }

    private void OnMoved(object? sender, LocationChangedEventArgs moved) => _ = InvokeAsync(() =>
        moved.Location != shown && IsHere(new Uri(moved.Location).AbsolutePath)
            ? BesideAsync(() => ShowAsync(moved.Location))
            : Task.CompletedTask);

    private bool IsHere(string path)
    {
        if (path == Shown.AbsolutePath) return true;
        // A page of several addresses, none with a parameter, is not told of the way from one to another either.
        var routes = GetType().GetCustomAttributes<RouteAttribute>().Select(r => r.Template).ToArray();
        return routes.Contains(path) && !routes.Any(r => r.Contains('{'));
    }

    private void OnNews(IReadOnlyCollection<int> chainIds)
    {
        if (!chainIds.Any(Shows) || Interlocked.Exchange(ref waiting, 1) == 1) return;
        _ = BesideAsync(async () =>
        {
            await Task.Delay(Pause, Time, Gone);
            Interlocked.Exchange(ref waiting, 0);
            await ReloadAsync();
        });
    }
}
