using LiveHeat.Engine;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Forecasts;

/// <summary>What is foretold of a heat, and what is worth saying. Estimates: it depends on the moment it is made at, as a frame does not. See docs/wire.md, section 5.</summary>
/// <param name="Heat">Which heat.</param>
/// <param name="Epoch">The ledger's id.</param>
/// <param name="Sequence">The newest fact it knows.</param>
/// <param name="MadeAt">When it was made.</param>
/// <param name="Lanes">Every lane of the heat; what is not known of one is null.</param>
/// <param name="Catches">Who may be past the team ahead soon.</param>
/// <param name="Tags">Each lane's next tag, the soonest first.</param>
/// <param name="Callouts">The next thing worth saying first.</param>
/// <param name="NotYet">What must not be said yet.</param>
public sealed record ForecastFrame(
    HeatId Heat, string Epoch, long Sequence, Instant MadeAt, Items<LaneOutlook> Lanes, Items<CatchOutlook> Catches, Items<TagOutlook> Tags,
    Items<Callout> Callouts, Items<NotYet> NotYet);

/// <summary>A lane's finish as far as it can be told.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="FinishMs">Lane time as likely too early as too late; null when too little is known, as all that follows.</param>
/// <param name="EarlyMs">One of ten finishes comes before it.</param>
/// <param name="LateMs">One of ten comes after it.</param>
/// <param name="BeatsCap">The chance to beat the cap, 0 to 1.</param>
/// <param name="Places">The chance of each place among lanes of the same prescription, from the first.</param>
public sealed record LaneOutlook(LaneNumber Lane, long? FinishMs, long? EarlyMs, long? LateMs, double? BeatsCap, Items<double>? Places);

/// <summary>A team that may be past the one ahead of it soon.</summary>
/// <param name="Chaser">Behind now.</param>
/// <param name="Chased">One place ahead now.</param>
/// <param name="Step">The step that the chaser may have done first.</param>
/// <param name="At">When.</param>
/// <param name="Chance">How likely, 0 to 1.</param>
public sealed record CatchOutlook(LaneNumber Chaser, LaneNumber Chased, int Step, Instant At, double Chance);

/// <summary>A lane's next tag.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Step">The tag's step.</param>
/// <param name="At">When it is expected.</param>
public sealed record TagOutlook(LaneNumber Lane, int Step, Instant At);
