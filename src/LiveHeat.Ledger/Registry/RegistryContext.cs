using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Registry;

/// <summary>The registry's tables. Another database has a context of its own derived from this one, since migrations belong to one provider.</summary>
internal class RegistryContext(DbContextOptions options) : DbContext(options)
{
    internal DbSet<SetupRow> Setup => Set<SetupRow>();

    internal DbSet<SignInRow> SignIns => Set<SignInRow>();

    internal DbSet<JoinCodeRow> JoinCodes => Set<JoinCodeRow>();

    internal DbSet<PassphraseRow> Passphrases => Set<PassphraseRow>();

    internal DbSet<SecretRow> Secrets => Set<SecretRow>();

    internal DbSet<SettingRow> Settings => Set<SettingRow>();

    internal DbSet<PictureRow> Pictures => Set<PictureRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<SetupRow>(setup =>
        {
            setup.ToTable("setup");
            setup.HasKey(s => new { s.Kind, s.Id });
            setup.Property(s => s.Kind).HasColumnName("kind");
            setup.Property(s => s.Id).HasColumnName("id");
            setup.Property(s => s.Json).HasColumnName("json");
            setup.Property(s => s.Version).HasColumnName("version");
        });
        modelBuilder.Entity<SignInRow>(signIn =>
        {
            signIn.ToTable("sign_ins");
            signIn.HasKey(s => s.Id);
            signIn.HasIndex(s => s.TokenHash).IsUnique();
            signIn.Property(s => s.Id).HasColumnName("id");
            signIn.Property(s => s.TokenHash).HasColumnName("token_hash");
            signIn.Property(s => s.Device).HasColumnName("device");
            signIn.Property(s => s.Name).HasColumnName("name");
            signIn.Property(s => s.Role).HasColumnName("role").HasConversion<string>();
            signIn.Property(s => s.Lane).HasColumnName("lane");
            signIn.Property(s => s.CreatedAtMs).HasColumnName("created_at_ms");
            signIn.Property(s => s.LastSeenAtMs).HasColumnName("last_seen_at_ms");
            signIn.Property(s => s.RevokedAtMs).HasColumnName("revoked_at_ms");
        });
        modelBuilder.Entity<JoinCodeRow>(code =>
        {
            code.ToTable("join_codes");
            code.HasKey(c => c.Id);
            code.HasIndex(c => c.CodeHash).IsUnique();
            code.Property(c => c.Id).HasColumnName("id");
            code.Property(c => c.CodeHash).HasColumnName("code_hash");
            code.Property(c => c.Role).HasColumnName("role").HasConversion<string>();
            code.Property(c => c.Lane).HasColumnName("lane");
            code.Property(c => c.CreatedAtMs).HasColumnName("created_at_ms");
            code.Property(c => c.ExpiresAtMs).HasColumnName("expires_at_ms");
            code.Property(c => c.ReplacedAtMs).HasColumnName("replaced_at_ms");
        });
        modelBuilder.Entity<PassphraseRow>(passphrase =>
        {
            passphrase.ToTable("passphrase");
            passphrase.HasKey(p => p.Id);
            passphrase.Property(p => p.Id).HasColumnName("id").ValueGeneratedNever();
            passphrase.Property(p => p.Salt).HasColumnName("salt");
            passphrase.Property(p => p.Iterations).HasColumnName("iterations");
            passphrase.Property(p => p.Hash).HasColumnName("hash");
            passphrase.Property(p => p.SetAtMs).HasColumnName("set_at_ms");
        });
        modelBuilder.Entity<SecretRow>(secret =>
        {
            secret.ToTable("secrets");
            secret.HasKey(s => s.Name);
            secret.Property(s => s.Name).HasColumnName("name");
            secret.Property(s => s.Value).HasColumnName("value");
        });
        modelBuilder.Entity<SettingRow>(setting =>
        {
            setting.ToTable("settings");
            setting.HasKey(s => s.Key);
            setting.Property(s => s.Key).HasColumnName("key");
            setting.Property(s => s.Value).HasColumnName("value");
        });
        modelBuilder.Entity<PictureRow>(picture =>
        {
            picture.ToTable("pictures");
            picture.HasKey(p => p.Key);
            picture.Property(p => p.Key).HasColumnName("key");
            picture.Property(p => p.ContentType).HasColumnName("content_type");
            picture.Property(p => p.Bytes).HasColumnName("bytes");
            picture.Property(p => p.KeptAtMs).HasColumnName("kept_at_ms");
        });
    }
}
