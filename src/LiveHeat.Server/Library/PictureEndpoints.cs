using LiveHeat.Contracts.Library;
using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Access;
using LiveHeat.Server.Setup;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Net.Http.Headers;
using Microsoft.OpenApi;

namespace LiveHeat.Server.Library;

/// <summary>The pictures of an organiser's movements: kept by the organiser, seen by anyone, and never anything else than a picture.</summary>
internal static class PictureEndpoints
{
    private const string Path = "/api/setup/movements/{id}/picture";

    public static IEndpointRouteBuilder MapPictures(this IEndpointRouteBuilder app)
    {
        app.MapPut(Path, Put).WhoMay(Role.Organiser).WithMetadata(new TakesBytes(), new RequestSizeLimitAttribute(PictureBytes.Most))
            .Produces<LibraryMovement>().ProducesProblem(404).ProducesProblem(413).ProducesProblem(415).WithName("PutPicture")
            .WithSummary("Attaches a picture (PNG, JPEG or WebP, at most 512 kB) to a movement of the organiser's own.")
            .AddOpenApiOperationTransformer((operation, _, _) =>
            {
                operation.RequestBody = new OpenApiRequestBody
                {
                    Required = true,
                    Content = PictureBytes.Types.ToDictionary(type => type, _ => new OpenApiMediaType { Schema = new OpenApiSchema { Type = JsonSchemaType.String, Format = "binary" } }),
                };
                return Task.CompletedTask;
            });
        app.MapGet(Path, Get).AnyoneMay().Produces(200, contentType: PictureBytes.Png, additionalContentTypes: [PictureBytes.Jpeg, PictureBytes.WebP]).ProducesProblem(404)
            .WithName("Picture").WithSummary("A movement's picture. v: the key of one picture for ever; without it the newest.");
        return app;
    }

    private static async Task<IResult> Put(string id, HttpContext context, SetupReader reader, SetupWriter writer, CancellationToken cancellation)
    {
        if ((await reader.All(cancellation)).Movements.All(movement => movement.Id != id))
        {
            return MovementSetup.None(id);
        }

        if (await Body(context.Request.Body, cancellation) is not { } bytes)
        {
            return OwnOrigin.TooLarge();
        }

        var type = PictureBytes.TypeOf(bytes);
        return type is not null && MediaTypeHeaderValue.TryParse(context.Request.ContentType, out var said) && said.MediaType.Equals(type, StringComparison.OrdinalIgnoreCase)
            ? await SetupEndpoints.Answer(writer.PutPicture(id, new Picture(type, bytes), cancellation))
            : Problems.Of(StatusCodes.Status415UnsupportedMediaType, "not-a-picture", SetupRefusals.NotAPicture);
    }

    private static async Task<IResult> Get(string id, string? v, HttpContext context, SetupReader reader, HeatRegistry registry, CancellationToken cancellation)
    {
        var key = v ?? PictureAddress.KeyOf((await reader.All(cancellation)).Movements.FirstOrDefault(movement => movement.Id == id)?.Picture);
        if (key is null || await registry.Pictures.Get(key, cancellation) is not { } picture)
        {
            return Problems.Of(StatusCodes.Status404NotFound, "no-such-picture", SetupRefusals.NoSuchPicture(id));
        }

        // A picture and nothing else, even when it is opened by itself and whatever is hidden in it.
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers.ContentSecurityPolicy = "default-src 'none'; sandbox";
        headers.CacheControl = v is null ? "no-cache" : "public, max-age=31536000, immutable";
        return Results.Bytes(picture.Bytes, picture.ContentType, entityTag: new EntityTagHeaderValue($"\"{key}\""));
    }

    /// <summary>All of the body; null when it is too large.</summary>
    private static async Task<byte[]?> Body(Stream body, CancellationToken cancellation)
    {
        var buffer = new byte[PictureBytes.Most + 1];
        var length = await body.ReadAtLeastAsync(buffer, buffer.Length, throwOnEndOfStream: false, cancellation);
        return length > PictureBytes.Most ? null : buffer[..length];
    }
}
