namespace WearWatch.Dashboard.Kit.Pages;

/// <summary>
/// Whether the page still shows the figures of an earlier choice. Its frame marks them, so that nobody reads them under the new
/// choice.
/// </summary>
public sealed class PageProgress
{
    private int begun;

    /// <summary>Whether figures are on their way.</summary>
    public bool IsLoading => begun > 0;

    /// <summary>Raised when it begins or ends.</summary>
    public event Action? Changed;

    /// <summary>Figures are on their way until what is given back is disposed of.</summary>
    public IDisposable Begin()
    {
        Move(1);
        return new Loading(this);
    }

    private void Move(int by)
    {
        begun += by;
        Changed?.Invoke();
    }

    private sealed class Loading(PageProgress progress) : IDisposable
    {
        public void Dispose() => progress.Move(-1);
    }
}
