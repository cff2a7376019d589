using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace WearWatch.Storage;

/// <summary>Keeps a moment as its ticks in UTC: one number that orders as time does, on both engines.</summary>
internal sealed class UtcTicks() : ValueConverter<DateTimeOffset, long>(
    moment => moment.UtcTicks, ticks => new DateTimeOffset(ticks, TimeSpan.Zero));
