using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Registry;

/// <summary>A way to join in a role. The code itself is not kept.</summary>
/// <param name="Id">Names it in lists; no secret.</param>
/// <param name="Role">What it lets in as.</param>
/// <param name="Lane">The judge's lane; null for others.</param>
/// <param name="CreatedAt">When it was made.</param>
/// <param name="ExpiresAt">From then on it lets nobody in.</param>
/// <param name="ReplacedAt">When a new code for the same role and lane took its place; null while it stands.</param>
public sealed record JoinCode(string Id, Role Role, LaneNumber? Lane, Instant CreatedAt, Instant ExpiresAt, Instant? ReplacedAt);

/// <summary>A new code and its eight characters, told this once.</summary>
public sealed record NewJoinCode(JoinCode Code, string Text);

/// <summary>What a typed code is.</summary>
public abstract record CodeCheck
{
    private CodeCheck()
    {
    }

    /// <summary>It lets in.</summary>
    public sealed record Good(JoinCode Code) : CodeCheck;

    /// <summary>It did once; it expired or was replaced. No guess: nobody is to be slowed down for it.</summary>
    public sealed record Over(JoinCode Code) : CodeCheck;

    /// <summary>There never was such a code.</summary>
    public sealed record Wrong : CodeCheck;
}

/// <summary>The join codes: eight characters of base 32, one for each role and lane at a time.</summary>
/// <remarks>
/// Forty bits can be tried out by whoever holds the hashes, and a slow salted hash would make every join try every code. So they are
/// hashed with a random key of this registry: one indexed read finds a code, and the hashes are worth nothing without the key. The key
/// lies in the same file; codes are over within the day, and whoever has the file has the competition.
/// </remarks>
public sealed class JoinCodes
{
    /// <summary>Characters of a code: 40 bits.</summary>
    public const int Length = 8;

    private const string PepperName = "join-code-pepper";

    private readonly RegistryFile file;
    private readonly byte[] pepper;

    private JoinCodes(RegistryFile file, byte[] pepper)
    {
        this.file = file;
        this.pepper = pepper;
    }

    internal static async Task<JoinCodes> Open(RegistryFile file, CancellationToken cancellation) =>
        new(file, await file.Write(Pepper, cancellation).ConfigureAwait(false));

    /// <summary>Makes a code; one made earlier for the same role and lane lets nobody in any more.</summary>
    public Task<NewJoinCode> Make(Role role, LaneNumber? lane, TimeSpan lifetime, CancellationToken cancellation)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(lifetime, TimeSpan.Zero);
        return file.Write(
            context =>
            {
                var now = file.Now;
                var number = lane?.Value;
                foreach (var earlier in context.JoinCodes.Where(c => c.Role == role && c.Lane == number && c.ReplacedAtMs == null))
                {
                    earlier.ReplacedAtMs = now.UnixMs;
                }

                var text = Unused(context);
                var row = new JoinCodeRow
                {
                    Id = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16)),
                    CodeHash = HashOf(text),
                    Role = role,
                    Lane = number,
                    CreatedAtMs = now.UnixMs,
                    ExpiresAtMs = (now + (long)lifetime.TotalMilliseconds).UnixMs,
                    ReplacedAtMs = null,
                };
                context.JoinCodes.Add(row);
                return new NewJoinCode(row.ToCode(), text);
            },
            cancellation);
    }

    /// <summary>Looks a typed code up. A good one stays good for the next phone.</summary>
    public Task<CodeCheck> Check(string? typed, CancellationToken cancellation)
    {
        if (CodeText.Normalise(typed, Length) is not { } text)
        {
            return Task.FromResult<CodeCheck>(new CodeCheck.Wrong());
        }

        var hash = HashOf(text);
        return file.Read<CodeCheck>(
            context => context.JoinCodes.AsNoTracking().SingleOrDefault(c => c.CodeHash == hash)?.ToCode() switch
            {
                null => new CodeCheck.Wrong(),
                { ReplacedAt: null } code when file.Now < code.ExpiresAt => new CodeCheck.Good(code),
                var code => new CodeCheck.Over(code),
            },
            cancellation);
    }

    /// <summary>Those that let somebody in now, in the order they were made.</summary>
    public Task<IReadOnlyList<JoinCode>> List(CancellationToken cancellation) =>
        file.Read<IReadOnlyList<JoinCode>>(
            context =>
            {
                var now = file.Now.UnixMs;
                return
                [
                    .. context.JoinCodes.AsNoTracking()
                        .Where(c => c.ReplacedAtMs == null && c.ExpiresAtMs > now)
                        .OrderBy(c => c.CreatedAtMs)
                        .ThenBy(c => c.Id)
                        .AsEnumerable()
                        .Select(c => c.ToCode()),
                ];
            },
            cancellation);

    private static byte[] Pepper(RegistryContext context)
    {
        if (context.Secrets.Find(PepperName) is { } known)
        {
            return known.Value;
        }

        var made = new SecretRow { Name = PepperName, Value = RandomNumberGenerator.GetBytes(32) };
        context.Secrets.Add(made);
        return made.Value;
    }

    private string Unused(RegistryContext context)
    {
        while (true)
        {
            var text = CodeText.Random(Length);
            var hash = HashOf(text);
            if (!context.JoinCodes.Any(c => c.CodeHash == hash))
            {
                return text;
            }
        }
    }

    private string HashOf(string text) => Convert.ToHexStringLower(HMACSHA256.HashData(pepper, Encoding.ASCII.GetBytes(text)));
}
