using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Testing.Hosting;

/// <summary>Tells when the server has let go of its files: a service that is made before others is disposed after them.</summary>
internal sealed class LastToClose
{
    private readonly ManualResetEventSlim closed = new(initialState: true);

    /// <summary>Whoever asks for that service makes this one's mark first.</summary>
    public void Outlive<T>(IServiceCollection services)
        where T : class
    {
        var own = services.Last(service => service.ServiceType == typeof(T)).ImplementationFactory!;
        services.AddSingleton(_ => new Mark(closed));
        services.AddSingleton(provider =>
        {
            provider.GetRequiredService<Mark>();
            return (T)own(provider);
        });
    }

    /// <summary>Returns when those services are disposed; at once when they were never asked for.</summary>
    public void Wait()
    {
        if (!closed.Wait(Heard<bool>.Patience))
        {
            throw new TimeoutException("The server did not let go of its files.");
        }
    }

    private sealed class Mark : IDisposable
    {
        private readonly ManualResetEventSlim closed;

        public Mark(ManualResetEventSlim closed)
        {
            this.closed = closed;
            closed.Reset();
        }

        public void Dispose() => closed.Set();
    }
}
