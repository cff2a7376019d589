using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Where ASP.NET Core Identity finds people and their passkeys.</summary>
internal sealed class PersonStore(WearDb db, IdentityErrorDescriber words)
    : UserOnlyStore<
        PersonRow, WearDb, int, IdentityUserClaim<int>, IdentityUserLogin<int>, IdentityUserToken<int>, IdentityUserPasskey<int>>(
        db, words);
