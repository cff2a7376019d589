using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Who sends the request that is being answered, and from which address.</summary>
internal sealed class RequestOrigin(IHttpContextAccessor requests) : IOrigin
{
    /// <inheritdoc/>
    public string Who => requests.HttpContext is { } http ? http.User.KeptName() ?? "" : "this machine";

    /// <inheritdoc/>
    public string Address => requests.HttpContext?.Connection.RemoteIpAddress?.ToString() ?? "";
}
