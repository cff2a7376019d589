using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Tests;
using WearWatch.Worker.Demo;

namespace WearWatch.Worker.Tests;

/// <summary>A worker on a data folder that is thrown away after the test. Its clock stands still until it is moved.</summary>
public sealed class TestPlant : IAsyncDisposable
{
    /// <summary>When every test begins.</summary>
    public static readonly DateTimeOffset Start = new(2026, 6, 1, 10, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo root = Directory.CreateTempSubdirectory("wear-plant");
    private readonly List<IHost> beside = [];
    private readonly StoreUnderTest under;
    private readonly IHost host;

    private TestPlant(StoreUnderTest under, IReadOnlyCollection<(string Key, string Value)> settings)
    {
        this.under = under;
        host = MakeHost(root.FullName, settings);
    }

    public FakeTimeProvider Clock { get; } = new(Start);

    public LogBook Log { get; } = new();

    public IntakeDesk Desk => Get<IntakeDesk>();

    public FileImport Import => Get<FileImport>();

    public ChainReview Review => Get<ChainReview>();

    public FleetModels Models => Get<FleetModels>();

    public DemoPlant Demo => Get<DemoPlant>();

    /// <summary>The setting that makes another process use the same database; empty on SQLite.</summary>
    public string Database => under.Database;

    public DataFolder Folder => Get<DataFolder>();

    public static async Task<TestPlant> OpenAsync(params (string Key, string Value)[] settings)
    {
        var under = await StoreUnderTest.MakeAsync();
        var plant = new TestPlant(under, [("Database", under.Database), .. settings]);
        StoreUnderTest.Fill(plant.Folder.Database);
        await plant.Get<WearStore>().PrepareAsync();
        return plant;
    }

    /// <summary>Another worker on the same database, as another process would be; thrown away with the plant.</summary>
    public IHost Beside()
    {
        var other = MakeHost(root.CreateSubdirectory($"beside{beside.Count}").FullName, [("Database", under.Database)]);
        beside.Add(other);
        return other;
    }

    public T Get<T>()
        where T : notnull => host.Services.GetRequiredService<T>();

    public WearDb Db() => Get<IDbContextFactory<WearDb>>().CreateDbContext();

    /// <summary>Starts the worker's loops.</summary>
    public Task StartAsync() => host.StartAsync();

    /// <summary>Adds a chain of 25.4 mm pitch and gives its id.</summary>
    public async Task<int> AddChainAsync(string name = "C1", string more = "")
    {
        var columns = more.Length > 0 ? "," + string.Join(',', more.Split(' ').Select(p => p.Split('=')[0])) : "";
        var values = more.Length > 0 ? "," + string.Join(',', more.Split(' ').Select(p => p.Split('=')[1])) : "";
        await Import.ImportAsync([A.File("chains.csv", $"chain,pitch_mm{columns}\n{name},25.4{values}\n")]);
        await using var db = Db();
        return await db.Chains.Where(c => c.Name == name).Select(c => c.Id).SingleAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await host.StopAsync();
        host.Dispose();
        foreach (var other in beside) other.Dispose();
        await under.DisposeAsync();
        root.Delete(recursive: true);
    }

    private IHost MakeHost(string folder, IReadOnlyCollection<(string Key, string Value)> settings)
    {
        var builder = Host.CreateEmptyApplicationBuilder(new HostApplicationBuilderSettings { ContentRootPath = folder });
        builder.Configuration
            .AddInMemoryCollection(settings.Select(s => new KeyValuePair<string, string?>($"WearWatch:{s.Key}", s.Value)));
        builder.Logging.AddProvider(Log);
        builder.Services.AddSingleton<TimeProvider>(Clock);
        builder.Services.AddWearWatch(builder.Configuration);
        return builder.Build();
    }
}
