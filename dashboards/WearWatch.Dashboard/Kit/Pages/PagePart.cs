using System.Globalization;
using Microsoft.AspNetCore.Components;

namespace WearWatch.Dashboard.Kit.Pages;

/// <summary>A page, or a part of one, that ends what it asked for when the person leaves it.</summary>
public abstract class PagePart : ComponentBase, IDisposable
{
    private readonly CancellationTokenSource gone = new();
    private readonly CultureInfo culture = CultureInfo.CurrentCulture;

    protected PagePart() => Gone = gone.Token;

    /// <summary>Ends when the person leaves the page.</summary>
    protected CancellationToken Gone { get; }

    public void Dispose()
    {
        Leave();
        gone.Cancel();
        gone.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Lets go of what outlives the page.</summary>
    protected virtual void Leave()
    {
    }

    /// <summary>Does something beside the page's own course, and draws the page again.</summary>
    /// <remarks>A mistake in it is shown as any other of the page; that the person has left is none.</remarks>
    protected Task BesideAsync(Func<Task> action) => InvokeAsync(async () =>
    {
        // News come from where no language is known.
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = culture;
        try
        {
            await action();
            StateHasChanged();
        }
        catch (OperationCanceledException) when (Gone.IsCancellationRequested)
        {
            // The person has left the page.
        }
        catch (Exception error)
        {
            await DispatchExceptionAsync(error);
        }
    });
}
