using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Testing.Hosting;

/// <summary>Tells when the server has let go of its files: a service that is made before others is disposed after them.</summary>
internal sealed class LastToClose
{
    private readonly TaskCompletionSource closed = new();
    private bool opened;

    /// <summary>Whoever asks for that service makes this one's mark first.</summary>
    public void Outlive<T>(IServiceCollection services)
        where T : class
    {
        var own = services.Last(service => service.ServiceType == typeof(T)).ImplementationFactory!;
        services.AddSingleton(_ =>
        {
            opened = true;
            return new Mark(closed);
        });
        services.AddSingleton(provider =>
        {
            provider.GetRequiredService<Mark>();
            return (T)own(provider);
        });
    }

    /// <summary>Returns when those services are disposed; at once when they were never asked for.</summary>
    public void Wait()
    {
        if (opened && !closed.Task.Wait(Heard<bool>.Patience))
        {
            throw new TimeoutException("The server did not let go of its files.");
        }
    }

    private sealed class Mark(TaskCompletionSource closed) : IDisposable
    {
        public void Dispose() => closed.TrySetResult();
    }
}
