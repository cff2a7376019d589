using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using WearWatch.Chains.Families;

namespace WearWatch.Storage;

/// <summary>Keeps a kind of chain by its name.</summary>
internal sealed class FamilyName() : ValueConverter<ChainFamily, string>(family => family.Name, name => ChainFamily.Named(name));
