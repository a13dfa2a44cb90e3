using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Ledger.Registry;

// The rows of the registry's tables. Times are whole milliseconds, so that every database orders them alike; a role is stored by name,
// so that the enum may be put in another order.

internal sealed class SetupRow
{
    public required string Kind { get; init; }

    public required string Id { get; init; }

    /// <summary>Null once deleted. The row stays, so that a document made again under the same id goes on counting versions.</summary>
    public required string? Json { get; set; }

    public required long Version { get; set; }

    internal SetupDocument ToDocument() => new(Kind, Id, Json!, Version);
}

internal sealed class SignInRow
{
    public required string Id { get; init; }

    public required string TokenHash { get; init; }

    public required string Device { get; init; }

    public required string Name { get; init; }

    public required Role Role { get; init; }

    public required int? Lane { get; init; }

    public required long CreatedAtMs { get; init; }

    public required long LastSeenAtMs { get; init; }

    public required long? RevokedAtMs { get; init; }

    internal SignIn ToSignIn() => new(
        Id, Device, Name, Role, LaneOf(Lane), new Instant(CreatedAtMs), new Instant(LastSeenAtMs), InstantOf(RevokedAtMs));

    internal static LaneNumber? LaneOf(int? lane) => lane is { } number ? new LaneNumber(number) : null;

    internal static Instant? InstantOf(long? unixMs) => unixMs is { } ms ? new Instant(ms) : null;
}

internal sealed class JoinCodeRow
{
    public required string Id { get; init; }

    public required string CodeHash { get; init; }

    public required Role Role { get; init; }

    public required int? Lane { get; init; }

    public required long CreatedAtMs { get; init; }

    public required long ExpiresAtMs { get; init; }

    public required long? ReplacedAtMs { get; set; }

    internal JoinCode ToCode() => new(
        Id, Role, SignInRow.LaneOf(Lane), new Instant(CreatedAtMs), new Instant(ExpiresAtMs), SignInRow.InstantOf(ReplacedAtMs));
}

/// <summary>The organiser's passphrase, one row.</summary>
internal sealed class PassphraseRow
{
    internal const int OnlyId = 1;

    public required int Id { get; init; }

    public required byte[] Salt { get; set; }

    public required int Iterations { get; set; }

    public required byte[] Hash { get; set; }

    public required long SetAtMs { get; set; }
}

/// <summary>Secret bytes the registry made for itself.</summary>
internal sealed class SecretRow
{
    public required string Name { get; init; }

    public required byte[] Value { get; init; }
}

internal sealed class PictureRow
{
    public required string Key { get; init; }

    public required string ContentType { get; init; }

    public required byte[] Bytes { get; init; }

    public required long KeptAtMs { get; init; }
}

internal sealed class SettingRow
{
    public required string Key { get; init; }

    public required string Value { get; set; }
}
