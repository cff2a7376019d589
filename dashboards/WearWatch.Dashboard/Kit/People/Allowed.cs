using Microsoft.AspNetCore.Authorization;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Kit.People;

/// <summary>The policies, named for what they allow, and the roles that each asks for.</summary>
public static class Allowed
{
    /// <summary>Enter readings, record what was done, confirm and withdraw, judge notices.</summary>
    public const string MeasureAndDo = "measure and do";

    /// <summary>Change cards of chains and take files in.</summary>
    public const string KeepRegister = "keep the register";

    /// <summary>Plan swaps, with their shutdowns, spares and costs.</summary>
    public const string Plan = "plan";

    /// <summary>Judge alarms of the engineer's desk and remake its record.</summary>
    public const string Study = "study";

    /// <summary>Look after people, keys, tablets and the plant's settings.</summary>
    public const string Administer = "administer";

    private static readonly Dictionary<string, PersonRoles> ByPolicy = new()
    {
        [MeasureAndDo] = PersonRoles.Technician | PersonRoles.Planner | PersonRoles.Engineer,
        [KeepRegister] = PersonRoles.Planner | PersonRoles.Engineer,
        [Plan] = PersonRoles.Planner,
        [Study] = PersonRoles.Engineer,
        [Administer] = PersonRoles.Administrator,
    };

    /// <summary>
    /// Adds the policies. What has none asks for a signed-in person or machine, so that nothing is forgotten open.
    /// </summary>
    public static IServiceCollection AddAllowed(this IServiceCollection services)
    {
        var builder = services.AddAuthorizationBuilder()
            .SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
        foreach (var (policy, roles) in ByPolicy) builder.AddPolicy(policy, p => p.RequireRole(RoleWords.Of(roles)));
        return services;
    }
}
