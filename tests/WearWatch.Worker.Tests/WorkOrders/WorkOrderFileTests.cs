using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.WorkOrders;

/// <summary>Reports on work orders by file: taken once, refused with reasons, read by another program's columns.</summary>
public sealed class WorkOrderFileTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Rows_are_taken_once_those_at_fault_are_refused_and_the_rest_is_worked_off()
    {
        await using var mill = await OrderedMill.OpenAsync();
        var file = A.File("answers.csv", "swap,order_number,order_state,done_at,hours_worked,material,note\n"
            + $"{mill.First},4711,released,,,,\n"
            + $"{mill.First},4711,Done,{mill.Now.AddHours(-1):yyyy-MM-ddTHH:mm:ssZ},3.5,90 16B-1 chain; "
            + "1 16B-1 connecting link,ok\n"
            + "swap-777,1,open,,,,\n"
            + $"{mill.First},4711,finished,,,,\n"
            + $"{mill.First},4711,done,,,,\n"
            + $"{mill.First},4711,open,,,chain 90,\n");
        var import = mill.Mill.Get<FileImport>();
        var first = Assert.Single((await import.ImportAsync([file], null, Ct)).Files);
        Assert.Equal((FileKind.WorkOrders, 3, 3), (first.Kind, first.Taken, first.Refused));
        Assert.Equal([(5, "order_state"), (6, "done_at"), (7, "material")],
            first.Remarks.Where(r => r.Kind == RemarkKind.Refused).Select(r => (r.Line, r.Column)).Order());
        var second = Assert.Single((await import.ImportAsync([file], null, Ct)).Files);
        Assert.Equal((0, 3), (second.Taken, second.AlreadyKnown));

        Assert.Equal(3, await mill.Desk.WorkOffAsync(Ct));
        Assert.Equal((SwapEnd.Done, 3.5, 70),
            ((await mill.SwapAsync()).Outcome, (await mill.SwapAsync()).HoursWorked, await mill.StockAsync()));
        await using var db = mill.Db();
        Assert.Equal([WorkOrderStanding.Used, WorkOrderStanding.Used, WorkOrderStanding.InConflict],
            await db.WorkOrderReports.OrderBy(r => r.Id).Select(r => r.Standing).ToListAsync(Ct));
        Assert.Equal("answers.csv:2 (Ina)", (await db.WorkOrderReports.OrderBy(r => r.Id).FirstAsync(Ct)).ToldBy);
    }

    [Fact]
    public async Task Columns_of_another_program_are_mapped_once_and_remembered()
    {
        await using var mill = await OrderedMill.OpenAsync();
        const string theirs = "Ref;Order;Status;Finish;Remark\n";
        var import = mill.Mill.Get<FileImport>();
        var file = A.File("export1.csv", theirs + $"{mill.First};4711;released;;first\n");
        Assert.Equal(FileKind.Unknown, (await import.LookAsync(file, Ct)).Kind);
        file = file with
        {
            Choice = new FileChoice
            {
                Kind = FileKind.WorkOrders,
                Columns = new Dictionary<string, string>
                {
                    ["ref"] = "swap",
                    ["order"] = "order_number",
                    ["status"] = "order_state",
                    ["finish"] = "done_at",
                    ["remark"] = "note",
                },
            },
        };
        Assert.Equal(1, (await import.ImportAsync([file], null, Ct)).Taken);
        var next = A.File("export2.csv", theirs + $"{mill.First};4711;in_work;;second\n");
        Assert.Equal(1, (await import.ImportAsync([next], null, Ct)).Taken);
        Assert.Equal(2, await mill.Desk.WorkOffAsync(Ct));
        Assert.Equal(("4711", WorkOrderState.InWork), ((await mill.OrderAsync())!.Number, (await mill.OrderAsync())!.State));
    }
}
