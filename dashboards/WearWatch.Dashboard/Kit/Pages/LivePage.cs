using Microsoft.AspNetCore.Components;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Kit.Pages;

/// <summary>A page that draws itself again when chains change, at most once in <see cref="Pause"/>.</summary>
/// <remarks>An import tells of thousands of changes; a person can read only the last.</remarks>
public abstract class LivePage : ComponentBase, IDisposable
{
    /// <summary>The shortest time between two drawings.</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(500);

    private readonly CancellationTokenSource gone = new();
    private int waiting;

    [Inject]
    private PlantNews News { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    /// <summary>Ends when the person leaves the page.</summary>
    protected CancellationToken Gone => gone.Token;

    /// <summary>Whether the page shows this chain.</summary>
    protected virtual bool Shows(int chainId) => true;

    /// <summary>Asks for what the page shows.</summary>
    protected abstract Task LoadAsync();

    protected override void OnInitialized() => News.ChainsChanged += OnNews;

    private void OnNews(IReadOnlyCollection<int> chainIds)
    {
        if (!chainIds.Any(Shows) || Interlocked.Exchange(ref waiting, 1) == 1) return;
        _ = InvokeAsync(DrawAgainAsync);
    }

    private async Task DrawAgainAsync()
    {
        try
        {
            await Task.Delay(Pause, Clock, Gone);
            Interlocked.Exchange(ref waiting, 0);
            await LoadAsync();
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
        News.ChainsChanged -= OnNews;
        gone.Cancel();
        gone.Dispose();
        GC.SuppressFinalize(this);
    }
}
