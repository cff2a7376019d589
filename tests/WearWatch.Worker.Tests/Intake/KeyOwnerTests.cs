using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>The program's own keys are apart from those that others send: nobody can take them.</summary>
public sealed class KeyOwnerTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Forged_keys_lock_no_reading()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var first = Taken(await plant.Desk.TakeReadingAsync(A.Reading(counterH: 100), Ct));
        var h = 200;
        foreach (var key in new[] { $"confirm:{first}", $"withdraw:{first}", $"withdraw-event:{first}" })
            await plant.Desk.TakeReadingAsync(A.Reading(counterH: h += 100) with { Key = key }, Ct);
        Taken(await plant.Desk.WithdrawAsync(first, "Ina", "a slip", Ct));
        Taken(await plant.Desk.ConfirmAsync(first, "Ina", isPlanner: false, Ct));
        await using var db = plant.Db();
        Assert.Equal(2, await db.Readings.CountAsync(r => r.KeyOwner == KeyOwner.Program, Ct));
    }

    [Fact]
    public async Task A_forged_key_keeps_no_event_from_being_withdrawn_and_no_row_of_a_file_out()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var told = new ChainEvent { Chain = "C1", Kind = ChainEventKind.Oiling, At = TestPlant.Start };
        var first = Taken(await plant.Desk.TakeEventAsync(new NewEvent { Key = "a", Told = told, ToldBy = "Ina" }, Ct));
        var forged = new NewEvent { Key = $"withdraw-event:{first}", Told = told with { Note = "forged" }, ToldBy = "Eve" };
        Taken(await plant.Desk.TakeEventAsync(forged, Ct));
        Taken(await plant.Desk.WithdrawEventAsync(first, "Ina", "a slip", Ct));

        var inFile = A.Reading(counterH: 500);
        var fingerprint = Fingerprint.Of(EntryReading(inFile));
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 300) with { Key = fingerprint }, Ct);
        var report = await plant.Import.ImportAsync([A.Readings(A.Row(counterH: 500))], null, Ct);
        Assert.Equal((1, 0), (report.Taken, report.Refused));
    }

    private static Reading EntryReading(NewReading told) =>
        told.ToReading((EnteredLengths.Understood)EnteredLengths.Read(told.Length, told.Unit));

    private static long Taken(IntakeAnswer answer) => Assert.IsType<IntakeAnswer.Taken>(answer).Id;
}
