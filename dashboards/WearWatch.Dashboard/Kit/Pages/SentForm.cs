namespace WearWatch.Dashboard.Kit.Pages;

/// <summary>A form as it was sent.</summary>
internal static class SentForm
{
    /// <summary>Reads it; null for one that is broken, or none at all.</summary>
    public static async Task<IFormCollection?> ReadAsync(HttpRequest request, CancellationToken ct)
    {
        if (!request.HasFormContentType) return null;
        try
        {
            return await request.ReadFormAsync(ct);
        }
        catch (Exception error) when (error is InvalidDataException or InvalidOperationException
            or (IOException and not BadHttpRequestException))
        {
            return null;
        }
    }
}
