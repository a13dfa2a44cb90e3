using LiveHeat.Server.Access;
using LiveHeat.Server.Board;
using LiveHeat.Server.Hubs;

namespace LiveHeat.Server.Overlay;

/// <summary>
/// What a video mix lays over its picture: transparent, nothing to press, restored from this one answer when the mix shows it again. <c>?full=1</c> fills the picture.
/// </summary>
internal static class OverlayPages
{
    public static void MapOverlay(this IEndpointRouteBuilder app)
    {
        app.MapGet("/overlay", (HttpRequest request, BoardPageMaking making, CancellationToken cancellation) => making.Page<OverlayPage>(HeatHub.Current, request, cancellation))
            .AnyoneMay().ExcludeFromDescription();
        app.MapGet("/overlay/{heat}", (string heat, HttpRequest request, BoardPageMaking making, CancellationToken cancellation) => making.Page<OverlayPage>(heat, request, cancellation))
            .AnyoneMay().ExcludeFromDescription();
    }
}
