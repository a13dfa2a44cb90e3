using System.Collections.Concurrent;
using Microsoft.AspNetCore.SignalR;

namespace LiveHeat.Server.Access;

/// <summary>The hub connections of those who are signed in, so that a sign-out also ends what is pushed to them.</summary>
internal sealed class OpenConnections
{
    private readonly ConcurrentDictionary<string, (string SignIn, HubCallerContext Connection)> open = new();

    public void Opened(string signIn, HubCallerContext connection)
    {
        if (signIn.Length > 0)
        {
            open[connection.ConnectionId] = (signIn, connection);
        }
    }

    public void Gone(HubCallerContext connection) => open.TryRemove(connection.ConnectionId, out _);

    /// <summary>Closes those of one sign-in; the screens come back as whoever they are then.</summary>
    public void Close(string signIn)
    {
        foreach (var (_, connection) in open.Values.Where(one => one.SignIn == signIn))
        {
            connection.Abort();
        }
    }
}
