using System.Buffers.Text;
using System.Security.Cryptography;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Connection;

/// <summary>Ids for the commands of this page: 128 random bits made with it, and a counter.</summary>
public sealed class CommandIds
{
    private readonly string outbox = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16));
    private long counter;

    /// <summary>A fresh one. What is sent again keeps its id.</summary>
    public FactId Next() => new(outbox, Interlocked.Increment(ref counter));
}
