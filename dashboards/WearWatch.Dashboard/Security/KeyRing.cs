using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Microsoft.Extensions.Options;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Security;

/// <summary>Lets ASP.NET Core find its keys in the plant's memory.</summary>
public sealed class KeyRing(SharedKeyDesk keys) : IXmlRepository, IConfigureOptions<KeyManagementOptions>
{
    public void Configure(KeyManagementOptions options) => options.XmlRepository = this;

    public IReadOnlyCollection<XElement> GetAllElements() => [.. keys.All().Select(XElement.Parse)];

    public void StoreElement(XElement element, string friendlyName) =>
        keys.Keep(friendlyName, element.ToString(SaveOptions.DisableFormatting));
}
