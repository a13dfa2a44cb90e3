using System.Reflection;
using System.Text.Json;
using LiveHeat.Contracts.Wire;
using Microsoft.AspNetCore.Http.Metadata;

namespace LiveHeat.Server.Access;

/// <summary>A request's body, read as JSON of the wire.</summary>
internal sealed record Body<T>(T Value) : IEndpointParameterMetadataProvider
    where T : class
{
    public static async ValueTask<Body<T>?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        _ = parameter;
        try
        {
            return new Body<T>(await JsonSerializer.DeserializeAsync<T>(context.Request.Body, WireJson.Options, context.RequestAborted)
                ?? throw new JsonException(WireWords.Missing, "$", 0, 0));
        }
        catch (JsonException wrong)
        {
            throw new BadHttpRequestException("The body cannot be read.", StatusCodes.Status400BadRequest, wrong);
        }
        catch (NotSupportedException wrong)
        {
            // A family of cases (such as the relay order) came without the field that names the case.
            throw new BadHttpRequestException("The body cannot be read.", StatusCodes.Status400BadRequest, wrong);
        }
    }

    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata(["application/json"], typeof(T)));
}
