using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>Asks what drives wear: the newest fleet model, and the chains held against it.</summary>
public sealed class DriversQuery(IDbContextFactory<WearDb> databases, FleetModels models) : IDisposable
{
    private const double Errors90 = 1.6449;
    private const double TellingLogFactor = 0.1;

    private readonly SemaphoreSlim turn = new(1);
    private (string Model, long Forecast, DriversView View)? kept;

    /// <summary>The page; null while no fleet model has been trained.</summary>
    public async Task<DriversView?> AskAsync(CancellationToken ct)
    {
        await turn.WaitAsync(ct);
        try
        {
            if (await models.CurrentAsync(ct) is not { } model) return null;
            await using var db = await databases.CreateDbContextAsync(ct);
            var newest = await db.Forecasts.MaxAsync(f => (long?)f.Id, ct) ?? 0;
            if (kept is { } before && before.Model == model.Version && before.Forecast == newest) return before.View;
            var view = await ViewAsync(db, model, ct);
            kept = (model.Version, newest, view);
            return view;
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>What could be done to a chain; null when there is no such chain or no model.</summary>
    public async Task<IReadOnlyList<PossibleChange>?> WhatIfAsync(string chain, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        if (await db.Chains.AsNoTracking().FirstOrDefaultAsync(c => c.Name == chain, ct) is not { } row) return null;
        if (await models.CurrentAsync(ct) is not { } model) return null;
        var kept = await db.Forecasts.Where(f => f.ChainId == row.Id && f.IsLatest)
            .Select(f => new { f.MeanHoursSinceOiling, f.AmbientC }).FirstOrDefaultAsync(ct);
        return PossibleChange.Of(Seen(row.ToCard(), kept?.MeanHoursSinceOiling, kept?.AmbientC), model);
    }

    public void Dispose() => turn.Dispose();

    private static async Task<DriversView> ViewAsync(WearDb db, FleetModel model, CancellationToken ct)
    {
        var row = await db.FleetModels.AsNoTracking().Where(m => m.Version == model.Version)
            .Select(m => new { m.Version, m.TrainedAt, m.Report }).SingleAsync(ct);
        var report = JsonSerializer.Deserialize<FleetModelReport>(row.Report, JsonSerializerOptions.Web)
            ?? throw new InvalidDataException($"The report of fleet model {row.Version} is empty.");
        var chains = await (
            from chain in db.Chains.AsNoTracking()
            join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId
            select new
            {
                chain,
                forecast.RatePctPer1000H,
                forecast.LogRateSd,
                forecast.ReadingsUsed,
                forecast.HoursSinceOiling,
                forecast.OilingIntervalH,
                forecast.MeanHoursSinceOiling,
                forecast.AmbientC,
            }).ToListAsync(ct);
        var risen = await db.Notices.Where(n => n.EndedAt == null && n.Kind == NoticeKind.RateHasRisen)
            .Select(n => n.ChainId).ToHashSetAsync(ct);
        var lots = (await db.Events.AsNoTracking().Where(e => e.Kind == ChainEventKind.Replacement).OrderBy(e => e.Id)
            .ToListAsync(ct))
            .GroupBy(e => e.ChainId).ToDictionary(g => g.Key, g => StandingRows.Standing([.. g]));
        var cards = chains.ConvertAll(c =>
            Seen(c.chain.ToCard(), c.MeanHoursSinceOiling, c.AmbientC) is var card && lots.TryGetValue(c.chain.Id, out var swaps)
            ? card.After(swaps.Select(s => s.ToEvent(card.Name)))
            : card);
        var against = chains.Zip(cards, (c, card) =>
        {
            // What its lot does is a reason why it differs from such chains, no part of what such chains do.
            var expected = Math.Exp(model.PriorFor(card with { Lot = "" }).MeanLogRate);
            var spread = Math.Exp(Errors90 * c.LogRateSd);
            var ratio = c.RatePctPer1000H / expected;
            return new AgainstExpectation
            {
                Name = card.Name,
                Line = card.Line,
                Rate = c.RatePctPer1000H,
                Expected = expected,
                Low = ratio / spread,
                High = ratio * spread,
                Readings = c.ReadingsUsed,
                Hints = [.. Hints(card, model, risen.Contains(c.chain.Id), c.HoursSinceOiling, c.OilingIntervalH)],
            };
        }).ToList();
        var rows = report.Effects.Skip(1) // the first is the average chain itself
            .ToLookup(e => e.Origin, e => DriverLine.Of(e, cards));
        var told = TellingHints(against);
        return new DriversView
        {
            Version = row.Version,
            TrainedAt = row.TrainedAt,
            Report = report,
            Drivers =
            [
                .. rows[""].Where(d => d.Chains > 0)
                    .OrderByDescending(d => d.IsDriver).ThenByDescending(d => Math.Abs(Math.Log(d.Factor)))
            ],
            Lines = [.. rows["line"].OrderByDescending(d => d.Factor)],
            Lots = [.. rows["lot"].OrderByDescending(d => d.Factor)],
            Partial = PartialEffect.Of(cards, model),
            Fast = [.. told.Where(a => a.Low > 1).OrderByDescending(a => a.Low).Take(DriversView.MostListed)],
            Slow = [.. told.Where(a => a.High < 1).OrderBy(a => a.High).Take(DriversView.MostListed)],
        };
    }

    /// <summary>The card as the fleet model was asked with it.</summary>
    internal static ChainCard Seen(ChainCard card, double? meanHoursSinceOiling, double? ambientC) =>
        card with { Duty = card.Duty with { HoursSinceOiling = meanHoursSinceOiling, AmbientC = ambientC } };

    /// <summary>What a third of all chains have in common explains none of them.</summary>
    private static List<AgainstExpectation> TellingHints(List<AgainstExpectation> chains)
    {
        var common = chains.SelectMany(c => c.Hints).CountBy(h => h).Where(h => 3 * h.Value > chains.Count).Select(h => h.Key)
            .ToHashSet();
        return chains.ConvertAll(c => c with { Hints = [.. c.Hints.Where(h => !common.Contains(h))] });
    }

    private static IEnumerable<Phrase> Hints(
        ChainCard card, FleetModel model, bool hasRisen, double? sinceOiling, double? oilingInterval)
    {
        if (hasRisen) yield return $"its rate has risen";
        if (model.Explain(card).FirstOrDefault(f => f is { Input: "lot", Told: true }) is { } lot
            && Math.Abs(Math.Log(lot.Factor)) > TellingLogFactor)
            yield return $"lot {card.Lot}: its chains wear × {lot.Factor:0.00}";
        if (sinceOiling > oilingInterval) yield return $"oil is overdue";
        foreach (var input in model.OutsideTrainingRange(card))
            yield return $"{DriverInput.Called(input)} outside what the fleet shows";
        if (card.Duty.RelativeLoad is null) yield return $"load not recorded";
        if (card.Duty.Lubrication is null) yield return $"lubrication not recorded";
        if (card.Duty.Dust is null) yield return $"dust not recorded";
    }
}
