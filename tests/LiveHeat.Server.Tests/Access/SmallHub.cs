using LiveHeat.Engine.Heats;
using Microsoft.AspNetCore.SignalR;

namespace LiveHeat.Server.Access;

/// <summary>A hub with one method of each kind.</summary>
internal sealed class SmallHub : Hub
{
    [WhoMay]
    public string Anybody() => Context.GetHttpContext()!.SignedIn().Role.ToString();

    [WhoMay(Role.Organiser, Role.HeadJudge)]
    public string Desk() => Context.GetHttpContext()!.SignedIn().Name;

    public string Unstated() => "reached";
}
