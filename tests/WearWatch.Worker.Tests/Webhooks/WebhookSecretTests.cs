using WearWatch.Plant.Webhooks;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Webhooks;

public sealed class WebhookSecretTests
{
    private static readonly DateTimeOffset at = DateTimeOffset.FromUnixTimeSeconds(1614265330);

    // Oracle: the example that receivers of this convention publish, recalled from memory; Python's hmac gives the same.
    [Fact]
    public void It_signs_the_published_example_as_published() =>
        Assert.Equal("v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=", Sign(Row("whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw")));

    [Fact]
    public void A_renewed_secret_signs_with_the_one_before_beside_it_until_its_time_is_over()
    {
        var (old, renewed) = (WebhookSecret.Make(), WebhookSecret.Make());
        Assert.NotEqual(old, renewed);
        var row = Row(renewed);
        (row.FormerSecret, row.FormerUntil) = (old, at.AddSeconds(1));
        Assert.Equal($"{Sign(Row(renewed))} {Sign(Row(old))}", Sign(row));
        row.FormerUntil = at;
        Assert.Equal(Sign(Row(renewed)), Sign(row));
    }

    private static string Sign(WebhookAddressRow row) =>
        WebhookSecret.Sign(row, "msg_p5jXN8AQM9LWM0D4loKWxJek", at, """{"test": 2432232314}""");

    private static WebhookAddressRow Row(string secret) =>
        new() { Name = "orders", Url = "https://orders.example.org", Secret = secret, AddedBy = "Ada" };
}
