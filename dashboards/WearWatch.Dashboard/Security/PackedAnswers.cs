using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;

namespace WearWatch.Dashboard.Security;

/// <summary>Answers go out packed to whoever can unpack: a phone's signal is weak, and a page mostly repeats itself.</summary>
/// <remarks>
/// Over HTTPS too. What is secret in a page, its form token, is masked anew in each answer, so that the packed length tells
/// nothing of it (the attack that is called BREACH).
/// </remarks>
internal static class PackedAnswers
{
    public static void AddPackedAnswers(this IServiceCollection services)
    {
        services.AddResponseCompression(options => options.EnableForHttps = true);
        services.Configure<BrotliCompressionProviderOptions>(options => options.Level = CompressionLevel.Optimal);
        services.Configure<GzipCompressionProviderOptions>(options => options.Level = CompressionLevel.Optimal);
    }
}
