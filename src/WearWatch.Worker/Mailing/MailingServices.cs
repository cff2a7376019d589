using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using MimeKit;
using WearWatch.Plant.Mailing;

namespace WearWatch.Worker.Mailing;

/// <summary>Puts the sending of mail into a host.</summary>
internal static class MailingServices
{
    /// <summary>Adds the settings and, where a server is set, what sends.</summary>
    public static void AddMailing(this IServiceCollection services, IConfiguration section)
    {
        services.AddOptions<MailOptions>().Bind(section.GetSection("Mail")).ValidateDataAnnotations()
            .Validate(o => !o.IsOn || MailboxAddress.TryParse(o.From, out _),
                "Mail:From has to be a sender such as WearWatch <wearwatch@example.org>.")
            .Validate(o => !o.IsOn || IsWebAddress(o.Link),
                "Mail:Link has to be the address at which people open WearWatch, such as https://wear.example.org.")
            .Validate(o => o.TokenUrl.Length == 0 || IsWebAddress(o.TokenUrl), "Mail:TokenUrl has to be a web address.")
            .Validate(o => o.Security != MailSecurity.None || (o.Password.Length == 0 && o.TokenUrl.Length == 0),
                "Mail:Security is None: a password or token would go in the open. Set StartTls or Tls, or no password.")
            .ValidateOnStart();
        if (!IsOn(section)) return;
        services.AddSingleton<AccessToken>();
        services.AddSingleton<MailServer>();
        services.AddSingleton<MailCarrier>();
    }

    /// <summary>Adds what sends of its own accord.</summary>
    public static void AddMailingWork(this IServiceCollection services, IConfiguration section)
    {
        if (IsOn(section)) services.AddHostedService(provider => provider.GetRequiredService<MailCarrier>());
    }

    private static bool IsOn(IConfiguration section) => !string.IsNullOrEmpty(section["Mail:Host"]);

    private static bool IsWebAddress(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var address) && (address.Scheme == "https" || address.Scheme == "http");
}
