using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;

namespace WearWatch.Dashboard.Kit.Pages;

/// <summary>A page that shows what the query of its address asks for, and asks anew when that changes.</summary>
public abstract class AddressPage : ComponentBase, IDisposable
{
    private readonly CancellationTokenSource gone = new();
    private string path = "";

    [Inject]
    private NavigationManager Address { get; set; } = default!;

    /// <summary>Ends when the person leaves the page.</summary>
    protected CancellationToken Gone => gone.Token;

    /// <summary>Asks for what the query of the address names.</summary>
    protected abstract Task AskAsync(string query);

    /// <summary>Moves to another query of this page.</summary>
    protected void Go(string query) => Address.NavigateTo(path + query, new NavigationOptions { ReplaceHistoryEntry = true });

    protected override void OnInitialized()
    {
        path = new Uri(Address.Uri).AbsolutePath;
        Address.LocationChanged += OnMoved;
    }

    protected override Task OnInitializedAsync() => AskAsync(new Uri(Address.Uri).Query);

    // Blazor does not tell a page without parameters that its query has changed.
    private void OnMoved(object? sender, LocationChangedEventArgs moved)
    {
        var to = new Uri(moved.Location);
        if (to.AbsolutePath == path) _ = InvokeAsync(() => AskAgainAsync(to.Query));
    }

    private async Task AskAgainAsync(string query)
    {
        try
        {
            await AskAsync(query);
            StateHasChanged();
        }
        catch (OperationCanceledException)
        {
            // The person has left the page.
        }
        catch (Exception error)
        {
            await DispatchExceptionAsync(error);
        }
    }

    public void Dispose()
    {
        Address.LocationChanged -= OnMoved;
        gone.Cancel();
        gone.Dispose();
        GC.SuppressFinalize(this);
    }
}
