using LiveHeat.Contracts.Access;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Server.Access;
using LiveHeat.Server.Setup;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Heats;

/// <summary>Tells a judge's phone which heat its lane is in.</summary>
internal sealed class PadReader(HeatSessions sessions, SetupReader setup, Timebase time)
{
    /// <summary>Names what the phone should be running: another build on the server means another version of the pad.</summary>
    public static readonly string Build = typeof(PadReader).Module.ModuleVersionId.ToString("N")[..8];

    public async Task<PadState> Read(SignedIn judge, CancellationToken cancellation)
    {
        var lane = judge.Lane!.Value;
        var called = await sessions.Called();
        var session = Choose(called, judge, lane);
        var competition = session?.State.Snapshot!.Competition ?? (await setup.All(cancellation)).Competition.Name;
        var seat = session is null ? null : OwnSeat(session.State, judge);
        var heat = session is null ? null : new PadHeat(session.Heat, session.State.Snapshot!.Title, session.State.PhaseAt(time.Now));
        return new PadState(
            sessions.Epoch, competition, lane, judge.Name, heat, seat?.Id, seat?.Duty,
            called.Where(other => other.State.Told == Phase.Certified).Select(other => other.Heat).ToItems(), Build);
    }

    /// <summary>The heat that this judge works in now; otherwise, or when the lane is through with it, the lane's newest that is not closed.</summary>
    private HeatSession? Choose(IReadOnlyList<HeatSession> called, SignedIn judge, LaneNumber lane)
    {
        var open = called.Where(session => session.State.Find(lane) is { Withdrawn: false } && session.State.Told is not (Phase.Frozen or Phase.Certified)).ToList();
        return open.FirstOrDefault(session => OwnSeat(session.State, judge) is not null && session.State.Find(lane) is { Finished: false, Stopped: null }
                && session.State.PhaseAt(time.Now) is Phase.CountingDown or Phase.Running or Phase.Halted)
            ?? open.MaxBy(session => session.State.CalledAt);
    }

    private static Seat? OwnSeat(HeatState heat, SignedIn judge) => heat.Seats.LastOrDefault(seat => seat.SignIn == judge.Id && seat.Until is null);
}
