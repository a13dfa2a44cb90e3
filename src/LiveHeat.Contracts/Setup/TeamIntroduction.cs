using LiveHeat.Engine;

namespace LiveHeat.Contracts.Setup;

/// <summary>What an announcer may say of a team beside its name: from the setup, never from the ledger.</summary>
/// <param name="Team">The team's id.</param>
/// <param name="Say">How to say the team's name; null when it says itself.</param>
/// <param name="Home">Its home gym or town; null when not told.</param>
/// <param name="Names">How to say the names that do not say themselves.</param>
/// <param name="Facts">A sentence each.</param>
public sealed record TeamIntroduction(string Team, string? Say, string? Home, Items<NameSaid> Names, Items<string> Facts)
{
    /// <summary>Of a team as it was set up.</summary>
    public static TeamIntroduction Of(TeamSetup team) => new(
        team.Id, team.Say, team.Home,
        team.Athletes.Zip(team.AthletesSay ?? [], (name, say) => new NameSaid(name, say)).Where(one => one.Say.Length > 0).ToItems(), team.Facts ?? []);
}

/// <summary>A name and how to say it.</summary>
public sealed record NameSaid(string Name, string Say);
