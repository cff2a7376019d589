using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <content>Work orders: what another system reports of planned swaps.</content>
public partial class WearDb
{
    public DbSet<WorkOrderReportRow> WorkOrderReports => Set<WorkOrderReportRow>();
}
