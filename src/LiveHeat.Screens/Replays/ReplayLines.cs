using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Replays;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Replays;

/// <summary>In which order a heat is played again.</summary>
public enum ReplayBy
{
    /// <summary>Every fact at the instant at which it happened.</summary>
    Happened,

    /// <summary>Every fact when the ledger had it.</summary>
    Known,
}

/// <summary>A <see cref="HeatReplay"/> as this screen keeps it: a frame is read only when it is shown, since there may be thousands.</summary>
public sealed record ReplayLines(HeatId Heat, string By, Items<Sheet> Sheets, Items<ReplayLine> Moments, StartFrame? Start, Items<Standstill> Halts);

/// <summary>A <see cref="ReplayMoment"/> whose frame is not read yet.</summary>
public sealed record ReplayLine(Instant At, long Sequence, JsonElement Frame);
