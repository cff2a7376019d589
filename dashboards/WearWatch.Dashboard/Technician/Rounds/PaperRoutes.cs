using Microsoft.AspNetCore.Http.HttpResults;
using WearWatch.Dashboard.Technician.Labels;
using WearWatch.Plant.Rounds;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Technician.Rounds;

/// <summary>What is printed for the floor: today's rounds, and the labels of a line or of the whole plant.</summary>
internal static class PaperRoutes
{
    public static void MapPaper(this IEndpointRouteBuilder app)
    {
        app.MapGet("/rounds/sheet", SheetAsync).ExcludeFromDescription();
        app.MapGet("/labels", LabelsAsync).ExcludeFromDescription();
    }

    private static async Task<RazorComponentResult> SheetAsync(RoundDesk desk, CancellationToken ct) =>
        new RazorComponentResult<RoundSheet>(new { View = await desk.AskAsync(ct) });

    private static async Task<RazorComponentResult> LabelsAsync(
        HttpRequest request, FloorQuery floor, PlantSettings settings, string? line, string? chain, CancellationToken ct)
    {
        var mark = await settings.MarkAsync(ct);
        var host = $"{request.Scheme}://{request.Host}";
        var chains = (await floor.AskAsync(ct))
            .Where(c => (line is null || c.Row.Line == line) && (chain is null || c.Row.Name == chain));
        return new RazorComponentResult<LabelSheet>(
            new { Labels = (IReadOnlyList<PositionLabel>)[.. chains.Select(c => PositionLabel.Of(c, host, mark))], Mark = mark });
    }
}
