using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Registry;

/// <summary>Somebody who may do something, on one device.</summary>
/// <param name="Id">Stands in facts as their sender; no secret.</param>
/// <param name="Device">The device it was made on.</param>
/// <param name="Name">The name they gave.</param>
/// <param name="Role">What they may do.</param>
/// <param name="Lane">The lane of a judge; null for others.</param>
/// <param name="CreatedAt">When they signed in.</param>
/// <param name="LastSeenAt">When <see cref="SignIns.Seen"/> was last told.</param>
/// <param name="RevokedAt">When it ended, by signing out or by the organiser; null while it stands.</param>
public sealed record SignIn(
    string Id, string Device, string Name, Role Role, LaneNumber? Lane, Instant CreatedAt, Instant LastSeenAt, Instant? RevokedAt);

/// <summary>A new sign-in and its token for the cookie. The token is told this once; only its hash is kept.</summary>
public sealed record NewSignIn(SignIn SignIn, string Token);

/// <summary>The sign-ins. They outlive a restart of the server.</summary>
public sealed class SignIns
{
    /// <summary>A token cannot be guessed, so its hash needs no salt and no slowness: 256 random bits.</summary>
    private const int TokenBytes = 32;

    private readonly RegistryFile file;

    internal SignIns(RegistryFile file) => this.file = file;

    public Task<NewSignIn> Make(string device, string name, Role role, LaneNumber? lane, CancellationToken cancellation) =>
        file.Write(
            context =>
            {
                var token = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(TokenBytes));
                var now = file.Now.UnixMs;
                var row = new SignInRow
                {
                    Id = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16)),
                    TokenHash = HashOf(token),
                    Device = device,
                    Name = name,
                    Role = role,
                    Lane = lane?.Value,
                    CreatedAtMs = now,
                    LastSeenAtMs = now,
                    RevokedAtMs = null,
                };
                context.SignIns.Add(row);
                return new NewSignIn(row.ToSignIn(), token);
            },
            cancellation);

    /// <summary>Whose token this is; null for a token that is unknown or was revoked.</summary>
    public Task<SignIn?> FindByToken(string token, CancellationToken cancellation)
    {
        var hash = HashOf(token);
        return file.Read(
            context => context.SignIns.AsNoTracking().SingleOrDefault(s => s.TokenHash == hash && s.RevokedAtMs == null)?.ToSignIn(),
            cancellation);
    }

    /// <summary>A sign-in by its id, revoked or not: old facts name theirs.</summary>
    public Task<SignIn?> Find(string id, CancellationToken cancellation) =>
        file.Read(context => context.SignIns.AsNoTracking().SingleOrDefault(s => s.Id == id)?.ToSignIn(), cancellation);

    /// <summary>Those that stand, in the order they were made.</summary>
    public Task<IReadOnlyList<SignIn>> List(CancellationToken cancellation) =>
        file.Read<IReadOnlyList<SignIn>>(
            context =>
            [
                .. context.SignIns.AsNoTracking()
                    .Where(s => s.RevokedAtMs == null)
                    .OrderBy(s => s.CreatedAtMs)
                    .ThenBy(s => s.Id)
                    .AsEnumerable()
                    .Select(s => s.ToSignIn()),
            ],
            cancellation);

    /// <summary>Notes that the device was there. Costs a write: once a minute is plenty.</summary>
    public Task Seen(string id, CancellationToken cancellation) =>
        file.Write(
            context => context.SignIns.Where(s => s.Id == id).ExecuteUpdate(s => s.SetProperty(row => row.LastSeenAtMs, file.Now.UnixMs)),
            cancellation);

    /// <returns>False when it is unknown or had ended before.</returns>
    public Task<bool> Revoke(string id, CancellationToken cancellation) =>
        file.Write(
            context => context.SignIns
                .Where(s => s.Id == id && s.RevokedAtMs == null)
                .ExecuteUpdate(s => s.SetProperty(row => row.RevokedAtMs, (long?)file.Now.UnixMs)) == 1,
            cancellation);

    private static string HashOf(string token) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(token)));
}
