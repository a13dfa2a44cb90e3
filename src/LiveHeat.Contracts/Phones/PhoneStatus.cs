using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Phones;

/// <summary>What a phone says of itself every few seconds. Not a fact: it decides nothing.</summary>
/// <param name="Lane">The lane it judges.</param>
/// <param name="Heat">The heat it is in; null between heats.</param>
/// <param name="Unsent">Taps on the phone without a receipt.</param>
/// <param name="OnPhone">All taps kept on the phone.</param>
/// <param name="Clock">good, fair, poor or none.</param>
/// <param name="UncertaintyMs">Clock error bound; null when unknown.</param>
/// <param name="Storage">safe or at-risk.</param>
/// <param name="Awake">The screen is kept on.</param>
/// <param name="Build">What it runs.</param>
/// <param name="Duty">What its judge has a seat for in that heat; null without a seat.</param>
public sealed record PhoneStatus(
    LaneNumber Lane, string? Heat, int Unsent, int OnPhone, string Clock, int? UncertaintyMs, string? Storage, bool? Awake, string? Build, Duty? Duty = null);

/// <summary>A phone as the desk sees it.</summary>
/// <param name="Device">Its sign-in.</param>
/// <param name="Judge">The judge's name.</param>
/// <param name="Lane">Its lane.</param>
/// <param name="Online">A connection is open and spoke lately.</param>
/// <param name="LastSeen">When it last spoke.</param>
/// <param name="Status">What it said last; null when it said nothing yet.</param>
public sealed record PhoneSeen(string Device, string Judge, LaneNumber Lane, bool Online, Instant LastSeen, PhoneStatus? Status);
