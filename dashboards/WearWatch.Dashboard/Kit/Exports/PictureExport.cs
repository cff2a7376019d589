using System.Net.Mime;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace WearWatch.Dashboard.Kit.Exports;

/// <summary>Draws a chart of a page as a picture file that needs no page around it.</summary>
/// <remarks>
/// The page's own component draws it, and its own colours of the light look are written into it: what is printed is what was
/// seen.
/// </remarks>
public sealed partial class PictureExport(IServiceProvider services, ILoggerFactory loggers, IWebHostEnvironment host)
{
    private readonly Lazy<string> style = new(() => Style(Read(host, "app.css"), Read(host, "engineering.css")));

    /// <summary>A component's drawing as an SVG file.</summary>
    public async Task<IResult> SvgAsync<TChart>(string fileName, Dictionary<string, object?> parameters)
        where TChart : IComponent
    {
        await using var renderer = new HtmlRenderer(services, loggers);
        var svg = await renderer.Dispatcher.InvokeAsync(async () =>
            (await renderer.RenderComponentAsync<TChart>(ParameterView.FromDictionary(parameters))).ToHtmlString());
        var start = svg.IndexOf('>', StringComparison.Ordinal) + 1;
        var picture = svg[..start] + "<style>" + style.Value + "</style>" + svg[start..];
        return Results.File(Encoding.UTF8.GetBytes(picture), MediaTypeNames.Image.Svg, fileName);
    }

    /// <summary>The rules of the charts with their colours written out.</summary>
    public static string Style(string appCss, string chartCss)
    {
        // The light look is named first, so that the first value of a name is its light one.
        var values = new Dictionary<string, string>();
        foreach (Match named in Named().Matches(appCss + chartCss))
            values.TryAdd(named.Groups[1].Value, named.Groups[2].Value.Trim());
        var rules = string.Concat(ChartRule().Matches(chartCss).Select(r => r.Value.Trim() + "\n"));
        return ".desk-chart{background:" + values.GetValueOrDefault("paper", "#fff") + ";font-family:sans-serif}\n"
            + Used().Replace(rules, used => values.GetValueOrDefault(used.Groups[1].Value, "currentColor"));
    }

    private static string Read(IWebHostEnvironment host, string file)
    {
        using var reader = new StreamReader(host.WebRootFileProvider.GetFileInfo(file).CreateReadStream());
        return reader.ReadToEnd();
    }

    [GeneratedRegex("--([a-z0-9-]+):\\s*([^;]+);")]
    private static partial Regex Named();

    [GeneratedRegex("var\\(--([a-z0-9-]+)\\)")]
    private static partial Regex Used();

    [GeneratedRegex("^\\.desk-chart[^{]*\\{[^}]*\\}", RegexOptions.Multiline)]
    private static partial Regex ChartRule();
}
