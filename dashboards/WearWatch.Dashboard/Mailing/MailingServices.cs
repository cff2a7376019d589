namespace WearWatch.Dashboard.Mailing;

/// <summary>Puts the writing of mails into the dashboard, where a mail server is set.</summary>
internal static class MailingServices
{
    public static void AddNoticeMail(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddSingleton<MailWriter>();
        if (!string.IsNullOrEmpty(configuration["WearWatch:Mail:Host"]))
            services.AddHostedService(provider => provider.GetRequiredService<MailWriter>());
    }
}
