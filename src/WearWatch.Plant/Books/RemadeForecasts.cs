using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Wear;

namespace WearWatch.Plant.Books;

/// <summary>
/// The track record of forecasts made again for lives that ended before any forecast was kept, such as an imported history.
/// </summary>
/// <remarks>
/// It works beside the pages and keeps what it found until the book of lives changes; a page asks for what there is. The fleet
/// model is today's and has seen these chains too, a few among many: the record flatters the first quarter of a life a little.
/// </remarks>
public sealed partial class RemadeForecasts(
    IDbContextFactory<WearDb> databases, FleetModels models, PlantSettings settings, IHostApplicationLifetime host,
    ILogger<RemadeForecasts> logger)
{
    /// <summary>So many lives are enough for bands of a few percent, and take seconds.</summary>
    public const int MostLives = 300;

    private const int LivesAtOnce = 25;
    private const int Seed = 17;

    private readonly Lock gate = new();
    private Task work = Task.CompletedTask;
    private int madeFor = -1;
    private (int Done, int Of)? progress;

    /// <summary>What has been scored so far.</summary>
    public IReadOnlyList<RecordedForecast> Latest { get; private set; } = [];

    /// <summary>How many lives are done, of how many; null when nothing is being made.</summary>
    public (int Done, int Of)? Progress
    {
        get
        {
            lock (gate) return progress;
        }

        private set
        {
            lock (gate) progress = value;
        }
    }

    /// <summary>Begins to make the record anew if lives have changed since, and returns at once.</summary>
    public Task Begin(FleetLives fleet)
    {
        lock (gate)
        {
            if (Progress is not null || madeFor == fleet.Version) return work;
            madeFor = fleet.Version;
            var ended = fleet.Chains.SelectMany(c => c.Lives.Where(l => l.Life.Failed && l.FittingKnown).Select(l => (c, l)))
                .ToArray();
            new Random(Seed).Shuffle(ended);
            var chosen = ended.Take(MostLives).ToArray();
            // from now on: a page that asks before the work has its turn must not think that it is done
            Progress = (0, chosen.Length);
            return work = Task.Run(() => MakeAsync(chosen));
        }
    }

    private async Task MakeAsync((BookedChain Chain, BookedLife Life)[] chosen)
    {
        try
        {
            var stop = host.ApplicationStopping;
            var calendar = await settings.CalendarAsync(stop);
            var model = await models.CurrentAsync(stop);
            var made = new List<RecordedForecast>();
            foreach (var some in chosen.Chunk(LivesAtOnce))
            {
                Progress = (made.Count / RecordedForecast.Shares.Count, chosen.Length);
                await using var db = await databases.CreateDbContextAsync(stop);
                var raw = (await RawChain.LoadAsync(db, [.. some.Select(s => s.Chain.Id).Distinct()], stop))
                    .ToDictionary(r => r.Id);
                foreach (var (chain, life) in some)
                {
                    var prior = model?.PriorFor(chain.CardOf(life)) ?? WearPrior.Broad;
                    made.AddRange(
                        Remaking.Forecasts(raw[chain.Id], chain, life, prior, model?.Version ?? prior.Source.ToString(),
                            calendar));
                }
            }

            Latest = made;
        }
        catch (Exception) when (host.ApplicationStopping.IsCancellationRequested)
        {
            // The host goes down; the record is made again after the next start.
        }
        catch (Exception error)
        {
            LogFailed(logger, error);
        }
        finally
        {
            Progress = null;
        }
    }

    [LoggerMessage(303, LogLevel.Error, "The forecasts of past lives could not be made again")]
    private static partial void LogFailed(ILogger logger, Exception error);
}
