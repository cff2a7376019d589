using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Webhooks;

namespace WearWatch.Worker.Webhooks;

/// <summary>Puts webhooks into a host.</summary>
internal static class WebhookServices
{
    /// <summary>Adds the settings and what sends.</summary>
    public static void AddWebhooks(this IServiceCollection services, IConfiguration section)
    {
        services.AddOptions<WebhookOptions>().Bind(section.GetSection("Webhooks")).ValidateDataAnnotations()
            .Validate(o => Uri.TryCreate(o.Source, UriKind.RelativeOrAbsolute, out _),
                "Webhooks:Source has to be an address such as https://wear.example.org.")
            .ValidateOnStart();
        services.AddSingleton<WebhookClient>();
    }

    /// <summary>Adds what looks and sends of its own accord.</summary>
    public static void AddWebhookWork(this IServiceCollection services)
    {
        services.AddHostedService<WebhookWriting>();
        services.AddHostedService<WebhookCarrier>();
    }
}
