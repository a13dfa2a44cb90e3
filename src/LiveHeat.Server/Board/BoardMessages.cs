using System.Text.Json;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Access;
using LiveHeat.Server.Hubs;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Board;

/// <summary>What the organiser tells the hall over the boards. One message at a time; the newest counts.</summary>
internal sealed class BoardMessages(HeatRegistry registry, Timebase time)
{
    /// <summary>Most characters: what a board can show large enough to be read from the stands.</summary>
    public const int MostCharacters = 160;

    private const string Name = "board-message";

    /// <summary>The message boards show now; null when there is none, or when its time is over.</summary>
    public async Task<BoardMessage?> Read(CancellationToken cancellation)
    {
        var stored = await registry.Settings.Get(Name, cancellation);
        var message = stored is null ? null : JsonSerializer.Deserialize<BoardMessage>(stored, WireJson.Options);
        return message is { Until: { } until } && until <= time.Now ? null : message;
    }

    /// <summary>Puts a message in the place of the one before. Safe to repeat.</summary>
    public Task Put(BoardMessage message, CancellationToken cancellation) =>
        registry.Settings.Put(Name, message.Text.Length == 0 ? null : JsonSerializer.Serialize(message, WireJson.Options), cancellation);
}

/// <summary>How the organiser writes it.</summary>
internal static class BoardMessageEndpoints
{
    public static void MapBoardMessage(this IEndpointRouteBuilder app) =>
        app.MapPut("/api/board/message", async (Body<BoardMessage> body, BoardMessages messages, Viewers viewers, CancellationToken cancellation) =>
            {
                var message = body.Value with { Text = body.Value.Text?.Trim() ?? "" };
                if (message.Text.Length > 0 && PlainText.Wrong(AccessRefusals.BoardMessage, message.Text, BoardMessages.MostCharacters) is { } wrong)
                {
                    return Problems.BadSetup([new FieldError("text", wrong)]);
                }

                await messages.Put(message, cancellation);
                viewers.OfferProgram();
                return Results.Json(message, WireJson.Options);
            })
            .WhoMay(Role.Organiser).Produces<BoardMessage>().ProducesProblem(400).WithName("PutBoardMessage")
            .WithSummary("A message that boards show instead of their pages; an empty text takes it away.");
}
